using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Templates;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Machining;

/// <summary>
/// The two strings of a flight as they are marked out together: face up, upper edges towards each other, so that their housings face and both climb to the right. Each lies with the pitch of its straight
/// steps level, the upper one turned end for end, and the first riser that both carry at x = 0: risers that both carry stand in one line square across them.
/// </summary>
/// <param name="Lower">The string that climbs to the right as one looks at its face.</param>
/// <param name="Upper">The other, drawn above it.</param>
/// <param name="Risers">Numbers of the risers squared across both, from the bottom up; two at least.</param>
public sealed record StringPair(StringBoard Lower, StringBoard Upper, ImmutableArray<int> Risers)
{
    /// <summary>The name of its file: pair-W1-F1.</summary>
    public string Name => $"pair-{Lower.Site.Mark}-{Upper.Site.Mark}";

    /// <summary>The pairs of a kit, from the bottom up: strings that run along the same straight steps, one on either side.</summary>
    public static ImmutableArray<StringPair> Of(Kit kit)
    {
        var pairs = ImmutableArray.CreateBuilder<StringPair>();
        foreach (var lower in kit.Strings.Where(s => StringEnds.SignOf(s) > 0))
            foreach (var upper in kit.Strings.Where(s => StringEnds.SignOf(s) < 0 && s.Site.Face.Along.Dot(lower.Site.Face.Along) > 1 - 1e-9))
                if (Shared(kit.Plan, lower, upper) is { Length: > 1 } risers) pairs.Add(new(lower, upper, risers));
        return [.. pairs.OrderBy(p => p.Risers[0])];
    }

    /// <summary>From a string's own drawing to where it lies in the pair's, before the upper one is moved clear of the lower: a turn and a shift, never a mirror.</summary>
    /// <param name="board">One of the two.</param>
    public (Angle Turn, Func<Point2, Point2> Motion) Lying(StringBoard board)
    {
        var (from, to) = (Place(board, Risers[0])!.Value, Place(board, Risers[^1])!.Value);
        var along = (to - from).Unit;
        return (Angle.FromRadians(-along.Direction), p => new(along.Dot(p - from), along.Left.Dot(p - from)));
    }

    /// <summary>The pitch point of a riser in a string's own drawing; null where it has none.</summary>
    public static Point2? Place(StringBoard board, int riser) =>
        board.PitchPoints.FirstOrDefault(p => p.Riser == riser) is { } point ? MachiningFrame.Place(board.Part, 0, new Point2(StringEnds.SignOf(board) * point.At.X, point.At.Y)) : null;

    /// <summary>The risers at either end of the straight steps that both carry.</summary>
    private static ImmutableArray<int> Shared(StairPlan plan, StringBoard lower, StringBoard upper)
    {
        var first = Math.Max(lower.Site.FirstRiser, upper.Site.FirstRiser);
        var last = Math.Min(lower.Site.LastRiser, upper.Site.LastRiser);
        // Step k lies between risers k and k + 1. The first or last of a turn may stand askew beside it.
        var straight = Enumerable.Range(first, Math.Max(0, last - first)).Where(k => plan.Steps[k - 1] == StepKind.Straight).SelectMany(k => new[] { k, k + 1 }).Distinct();
        return [.. straight.Where(k => Place(lower, k) is not null && Place(upper, k) is not null && Math.Abs(lower.Site.Face.Along.Dot((plan.Riser(k).Outer - plan.Riser(k).Inner).Unit)) < 1e-9)];
    }
}
