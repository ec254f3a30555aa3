using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>Where a cut of a newel lies: up from the foot, and from the left arris of its face.</summary>
internal static class NewelCutFacts
{
    private static readonly string Up = Why.Rule("heights on a newel are counted up from its foot: the height above the floor, less the foot's");
    private static readonly string Over = Why.Rule("each face is set out from its left arris, as one looks at it");

    public static IEnumerable<Fact> Of(PickBench bench, Part part, Cut cut)
    {
        var foot = part.FaceSide.Frame.Origin.Z;
        var tenon = TenonOf(bench, part, cut);
        if (cut.Kind == CutKind.Bore) return Bore(bench, part, cut, foot, tenon);
        return [.. Heights(bench, cut, foot, tenon), .. Across(bench, part, cut, tenon), .. tenon is null ? [] : Mortice(bench, cut, tenon)];
    }

    private static StringTenon? TenonOf(PickBench bench, Part part, Cut cut) =>
        bench.Kit.Strings.SelectMany(s => s.Tenons).FirstOrDefault(t => t.Newel == part.Id && cut.Joint == $"{t.Site.Id}/{part.Id}");

    private static IEnumerable<Fact> Heights(PickBench bench, Cut cut, double foot, StringTenon? tenon)
    {
        var box = cut.Filled.Bounds;
        yield return bench.Mm("top, up from the foot", box.MaxY, Up, "", [.. Level(bench, cut, true, foot), .. Thirds(tenon, foot), Working.Of(box.MaxY + foot) - foot]);
        if (cut.Kind is CutKind.Notch or CutKind.Split) yield break;
        yield return bench.Mm("bottom, up from the foot", box.MinY, Up, "", [.. Level(bench, cut, false, foot), .. Thirds(tenon, foot), Working.Of(box.MinY + foot) - foot]);
        yield return bench.Mm("height", box.Height, Why.Rule("from bottom to top"), "", Working.Of(box.MaxY) - box.MinY);
    }

    /// <summary>Heights of the band's ends and thirds.</summary>
    private static IEnumerable<Working> Thirds(StringTenon? tenon, double foot) => tenon is null ? [] :
    [
        Working.Of(tenon.Bottom) + tenon.Third - foot, Working.Of(tenon.Top) - tenon.Third - foot, Working.Of(tenon.Bottom) - foot, Working.Of(tenon.Top) - foot,
    ];

    /// <summary>Heights of housed pieces, from their levels.</summary>
    private static IEnumerable<Working> Level(PickBench bench, Cut cut, bool top, double foot)
    {
        if (cut.Kind != CutKind.Housing || bench.Joint(cut.Joint) is not { } joint || bench.Part(joint.Male) is not { } piece) yield break;
        var (plan, t, k) = (bench.Plan, bench.Practice.Tread, piece.Step);
        var at = Working.Of(k) * plan.Rise;
        if (piece.Kind is not (PartKind.Riser or PartKind.TaperedRiser))
        {
            yield return top ? at - foot : at - t - foot;
            yield break;
        }
        if (top) yield return at - t - foot;
        else
        {
            var below = Working.Of(k - 1) * plan.Rise;
            yield return below - t - foot;
            yield return below - foot;
        }
    }

    private static IEnumerable<Fact> Across(PickBench bench, Part part, Cut cut, StringTenon? tenon)
    {
        var (box, side) = (cut.Filled.Bounds, part.Blank.Width);
        var (left, right) = (Math.Max(0, box.MinX), Math.Min(side, box.MaxX));
        Working[] lefts = [], rights = [];
        if (tenon is not null)
        {
            // The string stands in the middle of the newel; its tenon keeps the back.
            var edge = Working.Of(side) / 2 - Working.Of(tenon.Site.Thickness) / 2;
            var far = Working.Of(side) / 2 + Working.Of(tenon.Site.Thickness) / 2;
            (lefts, rights) = ([edge, far - tenon.Thickness], [far, edge + tenon.Thickness]);
        }
        yield return bench.Mm("from the left arris", left, Over, "", lefts);
        yield return bench.Mm("to, from the left arris", right, Over, "", rights);
        yield return bench.Mm("width", right - left, Why.Rule("across the face"), "", Working.Of(right) - left);
    }

    private static IEnumerable<Fact> Mortice(PickBench bench, Cut cut, StringTenon tenon)
    {
        yield return TenonFacts.Third(bench, tenon, cut.Kind == CutKind.Haunch ? "gap between the tenons" : "depth of the tenon, up and down");
        if (cut.Kind != CutKind.Mortice) yield break;
        yield return bench.Mm("tenon's length", tenon.Length, Why.Rule("a part of the newel, or shorter where it would meet another joint"), "practice.tenon.part",
            [.. TenonFacts.Lengths(bench, tenon)]);
    }

    private static IEnumerable<Fact> Bore(PickBench bench, Part part, Cut cut, double foot, StringTenon? tenon)
    {
        var at = cut.Shape.Bounds.Centre;
        var side = part.Blank.Width;
        yield return bench.Mm("centre, up from the foot", at.Y, Up, "", tenon is null ? [] :
            [Working.Of(tenon.Bottom) + Working.Of(tenon.Third) / 2 - foot, Working.Of(tenon.Top) - Working.Of(tenon.Third) / 2 - foot, Working.Of(at.Y + foot) - foot]);
        yield return bench.Mm("centre, from the left arris", at.X, Over, "practice.tenon.pegBack", tenon is null ? [] : [Working.Of(side) - tenon.PegBack]);
        if (tenon is null) yield break;
        yield return bench.Mm("from the string's shoulder", tenon.PegBack, Why.Rule("never more than half the tenon, and clear of another string's mortice"), "practice.tenon.pegBack");
        yield return bench.Mm("draw", tenon.Practice.Draw, Why.Field("practice.tenon.draw"), "practice.tenon.draw");
    }
}
