using System.Collections.Immutable;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Board;

/// <summary>The rod as it hangs on a board: plan, strings in development, newels, tapered steps and balustrade beside one another at one scale.</summary>
/// <param name="Width">Of the board, mm.</param>
/// <param name="Height">Of the board, mm.</param>
/// <param name="Scale">Timber to paper, the same for every piece.</param>
/// <param name="Pieces">Plan, wall strings, newel strings, newels, tapered steps: the order of the stages; then rails with what stands between them.</param>
public sealed record RodBoard(double Width, double Height, Scale Scale, ImmutableArray<BoardPiece> Pieces)
{
    /// <summary>The piece with an id; null for none.</summary>
    public BoardPiece? Find(string id) => Pieces.FirstOrDefault(p => p.Id == id);

    /// <summary>Draws the rod of a stair; a right-hand stair's board is laid out the other way round.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="scale">The scale; null for the one that suits its size (see <see cref="ScaleFor"/>).</param>
    /// <param name="before">The board before a change: its pieces stay where they lie as long as they go there.</param>
    public static RodBoard Of(Stair stair, Scale? scale = null, RodBoard? before = null)
    {
        var at = scale ?? ScaleFor(stair);
        var bench = new BoardBench(stair, at, StagesBySubject(stair));
        var drafts = new List<PieceDraft> { PlanPiece.Draw(bench) };
        drafts.AddRange(StringView.All(stair, wall: true).Concat(StringView.All(stair, wall: false)).Select(v => StringPiece.Draw(bench, v)));
        drafts.AddRange(stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel).Select(p => NewelPiece.Draw(bench, p)));
        drafts.AddRange(stair.Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread).Select(p => StepPiece.Draw(bench, p)));
        drafts.AddRange(stair.Kit.Parts.Where(p => p.Kind is PartKind.Handrail or PartKind.WallRail).Select(p => RailPiece.Draw(bench, p)));
        var mirrored = stair.Job.IsRightHanded;
        var (size, places) = (before?.Scale == at ? BoardLayout.Keep(drafts, before, mirrored) : null) ?? BoardLayout.Lay(drafts, mirrored);
        return new(size.X, size.Y, at, [.. drafts.Zip(places, (d, p) => d.At(p))]);
    }

    /// <summary>1:5, the scale rods are taught at; 1:2.5 for a small model, 1:10 for a stair so long that its rod would not be seen as one.</summary>
    public static Scale ScaleFor(Stair stair) => (stair.Plan.WalkingLine.Length + stair.Job.Survey.Height) switch
    {
        < 2000 => Scale.OneTo(2.5),
        < 14000 => Scale.OneTo(5),
        _ => Scale.OneTo(10),
    };

    private static Dictionary<string, ImmutableArray<(int Number, Stage Stage, StageLine Line)>> StagesBySubject(Stair stair) =>
        RodStages.Of(stair).Stages.SelectMany(s => s.Lines.Select(l => (Stage: s, Line: l))).Select((x, i) => (Number: i + 1, x.Stage, x.Line))
            .GroupBy(x => x.Stage.Subject).ToDictionary(g => g.Key, g => g.ToImmutableArray());
}
