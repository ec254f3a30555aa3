using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A nosing's edge on the rod; at a landing or the upper floor the nosing piece itself.</summary>
internal static class NosingPick
{
    public static Pick? Of(PickBench bench, string id)
    {
        if (bench.Number(id, "nosing-") is not { } k) return null;
        var number = Number.Print(k, 0);
        if (bench.Part(id) is { } piece)
            return Draft.Pick(id, piece.Name, $"nosing piece on riser {number}, mark {piece.Mark}", [.. Relations.Step(bench, k), Relations.Edge(piece), .. Relations.CutsFor(bench, id)],
                [bench.Level("height of its top", k), .. Own(bench), .. Piece(bench, piece), .. ClauseFacts.At(bench, w => w == "every step", r => r == "nosing"), .. TreadOutline.Corners(bench, piece)]);
        return Draft.Pick(id, $"nosing {number}", $"front edge of tread {number}", Relations.Step(bench, k),
            [.. Own(bench), bench.Level("height", k), .. Measured(bench, k), .. ClauseFacts.At(bench, w => w == "every step", r => r == "nosing")]);
    }

    /// <summary>How far it stands out, and how it is rounded.</summary>
    private static IEnumerable<Fact> Own(PickBench bench)
    {
        yield return bench.Mm("in front of its riser's face", bench.Practice.Nosing, Why.Field("practice.nosing") + "; parallel to its own riser", "practice.nosing");
        yield return Round(bench);
    }

    public static Fact Round(PickBench bench) => bench.Mm("rounded to", bench.Practice.Tread / 2, Why.Rule("a full round: half the tread's thickness"), "practice.tread", Working.Of(bench.Practice.Tread) / 2);

    private static IEnumerable<Fact> Measured(PickBench bench, int k)
    {
        if (bench.Plan.TurnOf(k) is { } turn && turn.Steps.FirstOrDefault(s => s.Number == k) is { } step)
            yield return bench.Mm("to the next nosing on the walking line", step.NosingGoing, Why.Rule("straight across from nosing to nosing; reported beside the going on riser faces"), "practice.nosing", TurnPoints.OnNosings(bench, turn, k));
        else if (bench.Plan.Steps[k - 1] == StepKind.Straight && k < bench.Plan.Risers && bench.Plan.Steps[k] == StepKind.Straight)
            yield return bench.Mm("to the next nosing", bench.Plan.Going, Why.Rule("all nosings stand out alike, so they lie a going apart"), Why.Going);
    }

    private static IEnumerable<Fact> Piece(PickBench bench, Part piece)
    {
        yield return bench.Given("practice.nosingPiece", bench.Practice.NosingPiece);
        yield return bench.Mm("thickness", piece.Blank.Thickness, Why.Field("practice.tread"), "practice.tread");
        yield return bench.Mm("length of the piece", piece.Blank.Length, Why.Rule("between the faces, and its ends into their housings"), "", [.. TreadOutline.Length(bench, piece)]);
        yield return bench.Mm("width of the piece", piece.Blank.Width, Why.Rule("front to back, the nosing included"), "practice.nosingPiece");
    }
}
