using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// Upper and lower edge of a development, eased (setting-out.md 3): the margin line offset by the margin above, and below by what the board leaves or, where
/// that is not enough, by what the housings and the cover below them need.
/// </summary>
/// <param name="Upper">Eased upper edge, from the foot's plumb cut or the lower shoulder to the upper end.</param>
/// <param name="Lower">Eased lower edge; where it would lie below the floor it begins with the level cut on it.</param>
/// <param name="LowerOffsets">Square distance from the margin line to the lower edge, for each piece of the margin line.</param>
/// <param name="LeastWidth">Narrowest board that would hold the straight steps' housings, mm.</param>
/// <param name="LeastNosingCover">Least square distance from a nosing to the upper edge, mm.</param>
/// <param name="Easings">The tangent arcs drawn.</param>
public sealed record StringEdges(
    Path2 Upper, Path2 Lower, ImmutableArray<double> LowerOffsets, double LeastWidth, double LeastNosingCover, ImmutableArray<Easing> Easings)
{
    /// <summary>Makes the edges of a development whose boards carry the given housings.</summary>
    public static StringEdges Of(StairPlan plan, Development development, ImmutableArray<StringHousing> housings)
    {
        var practice = plan.Job.Practice;
        var (first, last) = (development.Sites[0], development.Sites[^1]);
        var margin = development.Margin;
        var nosings = housings.Where(h => h.Nosing is not null).Select(h => h.Nosing!.Value).ToList();
        var lows = LowPoints(plan, first, housings);
        var (offsets, least) = Offsets(development, practice, first.Width, lows);
        var upper = new EdgeLine(margin, [.. offsets.Select(_ => practice.Margin)]);
        var lower = new EdgeLine(margin, [.. offsets.Select(o => -o)]);

        var floor = first.Lower.Level;
        var start = first.Lower.Kind == StringEndKind.Foot ? Foot(plan, first, upper, nosings) : first.Lower.At + practice.Newel / 2;
        var upperEnd = last.Upper.Kind == StringEndKind.Head ? upper.LastStationAtHeight(last.Upper.Level + practice.SkirtingAt(last.Upper.Level)) : last.Upper.At - practice.Newel / 2;
        var lowerEnd = last.Upper.Kind == StringEndKind.Head ? StringHousings.TrimmerAt(plan, last) : upperEnd;
        var lowerStart = lower.HeightAt(start) < floor ? lower.StationAtHeight(floor) : start;
        var onFloor = lowerStart > lowerEnd - 1; // a string so short that all of it stands on the floor

        var easings = new List<Easing>();
        var upperPath = upper.Eased(start, upperEnd, practice.Easing, "upper", KeepsNosings, easings);
        // A string that stands on the floor with all its length is cut plumb.
        if (first.Lower.Kind == StringEndKind.Foot && !onFloor)
        {
            var meeting = SkirtingMeeting.Of(practice, upperPath, floor, lowerStart);
            (upperPath, start) = (meeting.Upper, meeting.FloorAt);
            if (meeting.Easing is { } eased) easings.Insert(0, eased);
        }
        var lowerPath = onFloor ? Path2.Polyline(new Point2(start, floor), new Point2(lowerEnd, floor)) : OnFloor(start, floor, lower.Eased(lowerStart, lowerEnd, practice.Easing, "lower", KeepsHousings, easings));
        var cover = nosings.Count == 0 ? practice.Margin : nosings.Min(n => upperPath.DistanceTo(n));
        return new(upperPath, lowerPath, [.. offsets], least, cover, [.. easings]);

        // An arc cuts wood away only where its centre lies on the wood's side: a hollow on the upper edge never comes nearer a nosing.
        bool KeepsNosings(Arc2 arc, Point2 a, Point2 b) => arc.Sweep > 0 || nosings.TrueForAll(n => Clears(arc, a, b, n, practice.NosingCover));

        bool KeepsHousings(Arc2 arc, Point2 a, Point2 b) => arc.Sweep < 0 || lows.TrueForAll(p => Clears(arc, a, b, p, practice.CoverBelow));
    }

    /// <summary>
    /// Where the foot is cut plumb: at skirting height, or in front of the first nosing with its cover where the skirting stands higher than the string there.
    /// </summary>
    private static double Foot(StairPlan plan, StringSite site, EdgeLine upper, List<Point2> nosings)
    {
        var practice = plan.Job.Practice;
        var atSkirting = upper.StationAtHeight(site.Lower.Level + practice.SkirtingAt(site.Lower.Level));
        return nosings.Count == 0 ? atSkirting : Math.Min(atSkirting, nosings.Min(n => n.X) - practice.NosingCover);
    }

    /// <summary>The level cut on the floor, from the foot to where the edge leaves it, added in front.</summary>
    private static Path2 OnFloor(double start, double floor, Path2 edge) =>
        edge.Vertices[0].At.X > start + Tolerance.Same ? new([new(new(start, floor)), .. edge.Vertices], false) : edge;

    private static bool Clears(Arc2 arc, Point2 a, Point2 b, Point2 p, double cover) =>
        p.X < a.X || p.X > b.X || arc.Radius - p.DistanceTo(arc.Centre) >= cover - 1e-9;

    /// <summary>Corners of housings that need wood below them; those on the floor have the floor.</summary>
    private static List<Point2> LowPoints(StairPlan plan, StringSite first, ImmutableArray<StringHousing> housings)
    {
        var floor = first.Lower.Level;
        return [.. housings.Where(h => !h.Piece.StartsWith("nosing", StringComparison.Ordinal))
            .SelectMany(h => h.Shape.Vertices).Select(v => v.At).Where(p => p.Y > floor + Tolerance.Same)];
    }

    /// <summary>
    /// One offset for each run of like steps: it starts as what the board leaves below the margin line and grows until every housing has its cover.
    /// </summary>
    private static (double[] Offsets, double Least) Offsets(Development development, Practice practice, double width, List<Point2> lows)
    {
        var n = development.Tapered.Length;
        var margin = development.Margin;
        var group = new int[n];
        for (var i = 1; i < n; i++)
        {
            // Runs at nearly the same pitch share an offset: their edges would meet far away, or not at all.
            var turn = Math.Abs((margin[i] - margin[i - 1]).Unit.Cross((margin[i + 1] - margin[i]).Unit));
            group[i] = development.Tapered[i] == development.Tapered[i - 1] || turn < 0.07 ? group[i - 1] : group[i - 1] + 1;
        }
        var offsets = Enumerable.Repeat(width - practice.Margin, n).ToArray();
        var least = 0.0;
        for (var round = 0; round < 20; round++)
        {
            var drawn = (double[])offsets.Clone();
            var edge = new EdgeLine(margin, [.. drawn.Select(o => -o)]);
            var grown = false;
            least = 0;
            foreach (var p in lows)
            {
                var (clear, piece) = edge.Above(p);
                var wanted = drawn[piece] - clear + practice.CoverBelow;
                if (!development.Tapered[piece] || n == 1) least = Math.Max(least, wanted + practice.Margin);
                if (clear >= practice.CoverBelow - 1e-9) continue;
                for (var i = 0; i < n; i++) if (group[i] == group[piece]) offsets[i] = Math.Max(offsets[i], wanted);
                grown = true;
            }
            if (!grown) break;
        }
        return (offsets, least);
    }
}
