using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Balustrades;

namespace Rodwright.Workshop.Picks;

/// <summary>What is told of a fitted piece and its cuts.</summary>
internal static class PieceFacts
{
    /// <summary>The kind of a piece, in a word.</summary>
    public static string Word(PartKind kind) => kind switch
    {
        PartKind.Handrail => "handrail",
        PartKind.BaseRail => "base rail",
        PartKind.Baluster => "baluster",
        PartKind.Fillet => "fillet in a groove",
        PartKind.NewelCap => "newel cap",
        PartKind.WallNewel => "half newel on a wall",
        PartKind.WallRail => "wall rail",
        PartKind.Bracket => "bracket",
        PartKind.LandingNosing => "landing nosing",
        PartKind.Apron => "apron lining",
        PartKind.Carriage => "carriage",
        PartKind.CarriageBracket => "bracket of a carriage",
        PartKind.Wedge => "wedge",
        PartKind.GlueBlock => "glue block",
        PartKind.Peg => "draw-bore peg",
        PartKind.BentRiser => "bent riser",
        PartKind.Block => "built-up block",
        PartKind.Wedges => "folding wedges",
        _ => "piece",
    };

    /// <summary>Sizes, number of equal pieces, and of a rail its height and pitch.</summary>
    public static IEnumerable<Fact> Of(PickBench bench, Part part)
    {
        var finished = Why.Rule("finished size");
        yield return bench.Mm("length", part.Blank.Length, Why.Rule("of the smallest board it comes out of, tenons included"));
        yield return bench.Mm("width", part.Blank.Width, finished);
        yield return bench.Mm("thickness", part.Blank.Thickness, finished);
        if (bench.Kit.Parts.Count(p => p.Mark == part.Mark) is > 1 and var count) yield return Facts.Count("pieces with this mark", count, Why.Rule("equal pieces share a mark"));
        if (part.Kind is PartKind.Handrail or PartKind.WallRail && BalustradePlan.Of(bench.Plan)?.Rails.FirstOrDefault(r => r.Id == part.Id) is { } rail)
        {
            yield return Facts.Degrees("pitch", rail.Pitch.Degrees, Why.Rule("parallel to the margin line of its string where it can be"));
            if (rail.Kind == RailKind.Landing) yield return bench.Mm("top, above its floor", rail.TopAt(rail.From) - rail.Floor, Why.Field("balustrade.landingHeight"), "balustrade.landingHeight");
            foreach (var h in rail.Heights.Where(h => h.Riser > 0)) yield return bench.Mm($"top, plumb above nosing {Geometry.Number.Print(h.Riser, 0)}", h.Above, Why.Field("practice.railHeight"), "practice.railHeight");
        }
        foreach (var joint in bench.JointsOf(part.Id).Take(6))
            if (bench.Proof.Joints.FirstOrDefault(j => j.Id == joint.Id) is { } proof)
                yield return Facts.Words(joint.Male == part.Id ? $"to {CutWords.The(bench.Part(joint.Female))}" : $"with {CutWords.The(bench.Part(joint.Male))}",
                    $"{proof.Kind}; {(proof.Holds ? "it closes" : "it does not close")}", Why.Rule("every joint is described on both its parts and proved"));
        yield return Facts.Words("timber", part.Material, Why.Field("practice.timber"), "practice.timber");
    }

    /// <summary>A cut that may begin below the face.</summary>
    public static IEnumerable<Fact> Sunk(PickBench bench, Cut cut)
    {
        if (cut.Beneath > 0) yield return bench.Mm("begins behind the face", cut.Beneath, Why.Rule("measured square in from the face side"));
        yield return bench.Mm("reaches behind the face", cut.Depth, Why.Rule("measured square in from the face side"));
        yield return bench.Mm("across", cut.Depth - cut.Beneath, Why.Rule("what is taken away"), "", Working.Of(cut.Depth) - cut.Beneath);
    }

    /// <summary>How long and high a cut is on the piece's face.</summary>
    public static IEnumerable<Fact> Places(PickBench bench, Cut cut)
    {
        var box = cut.Shape.Bounds;
        if (cut.Kind == CutKind.Bore) yield break;
        yield return bench.Mm("along the face", box.Width, Why.Rule("level"));
        yield return bench.Mm("up and down the face", box.Height, Why.Rule("plumb"));
    }
}
