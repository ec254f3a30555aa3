using Rodwright.Geometry;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Joinery.Wells;

/// <summary>One run of nosing and apron lining along an edge of the well. Offsets are measured from the edge into the well, stations along the edge.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="From">Station at which it begins.</param>
/// <param name="To">Station at which it ends.</param>
/// <param name="Across">Offsets of the nosing's front and back: between them lies all of it.</param>
/// <param name="Newels">Ids of the newels it butts against.</param>
internal sealed record WellRun(WellEdge Edge, double From, double To, (double Front, double Back) Across, IReadOnlyList<string> Newels)
{
    // An end that is less than this out of square over the nosing's width is cut square and clear of the wall, mm.
    private const double Square = 0.5;

    /// <summary>Whether it goes on round the corner before it: free of the stair to there, and another run comes to meet it.</summary>
    public bool Begins { get; init; }

    /// <summary>Whether it goes on round the corner after it.</summary>
    public bool Ends { get; init; }

    /// <summary>Whether it begins at the wall there.</summary>
    public bool BeginsAtWall { get; init; }

    /// <summary>Whether it ends at the wall there.</summary>
    public bool EndsAtWall { get; init; }

    /// <summary>The least and the greatest station any of an edge's pieces may reach, round its corners and on to its walls.</summary>
    public static (double From, double To) Reach(WellEdge edge, (double Front, double Back) across)
    {
        var run = new WellRun(edge, edge.From, edge.To, across, []) { Begins = edge.Before is not null, Ends = edge.After is not null, BeginsAtWall = edge.WallBefore is not null, EndsAtWall = edge.WallAfter is not null };
        var nosing = run.Nosing();
        // A wall may stand on either side of where the well's corner was measured.
        return (Math.Min(Math.Min(nosing.FrontFrom, nosing.BackFrom), run.BeginsAtWall ? double.PositiveInfinity : edge.From), Math.Max(Math.Max(nosing.FrontTo, nosing.BackTo), run.EndsAtWall ? double.NegativeInfinity : edge.To));
    }

    /// <summary>Whether a corner turns inwards as one walks round with the well on the left: the usual one, where two linings face each other. At the other kind the floor stands out into the well.</summary>
    public static bool IsInside(Line2 before, Line2 after) => before.Along.Cross(after.Along) > 0;

    /// <summary>Corners of the nosing in plan: of its front, then of its back.</summary>
    public (double FrontFrom, double FrontTo, double BackFrom, double BackTo) Nosing() => (
        Start(Across.Front, Across.Front), End(Across.Front, Across.Front), Start(Across.Back, Across.Back), End(Across.Back, Across.Back));

    /// <summary>Ends of the lining's face and back: in an inside corner the one that comes first runs through to the packing and the next is butted against it; where the floor stands out both are mitred.</summary>
    public (double FaceFrom, double FaceTo, double BackFrom, double BackTo) Apron(double face, double back)
    {
        var through = Ends && IsInside(Edge.Line, Edge.After!.Value);
        var butted = Begins && IsInside(Edge.Before!.Value, Edge.Line);
        return (Start(face, face), End(face, through ? back : face), Start(back, butted ? face : back), End(back, back));
    }

    /// <summary>Where its line at an offset begins: at the neighbour's line in a corner, at the wall, else where it was cut.</summary>
    private double Start(double offset, double neighbour) => Begins ? Crossing(offset, Edge.Before!.Value.OffsetLeft(neighbour)) ?? From
        : BeginsAtWall ? AtWall(offset, Edge.WallBefore!.Value, Math.Max) ?? From : From;

    private double End(double offset, double neighbour) => Ends ? Crossing(offset, Edge.After!.Value.OffsetLeft(neighbour)) ?? To
        : EndsAtWall ? AtWall(offset, Edge.WallAfter!.Value, Math.Min) ?? To : To;

    private double? AtWall(double offset, Line2 wall, Func<double, double, double> clear)
    {
        if (Crossing(Across.Front, wall) is not { } front || Crossing(Across.Back, wall) is not { } back) return null;
        return Math.Abs(front - back) < Square ? clear(front, back) : Crossing(offset, wall);
    }

    /// <summary>What its nosing covers in plan, anticlockwise.</summary>
    public List<Point2> Plan
    {
        get
        {
            var (front, back, ends) = (Edge.Line.OffsetLeft(Across.Front), Edge.Line.OffsetLeft(Across.Back), Nosing());
            return [back.At(ends.BackFrom), back.At(ends.BackTo), front.At(ends.FrontTo), front.At(ends.FrontFrom)];
        }
    }

    /// <summary>The run cut back so far that it clears another; itself where they keep apart.</summary>
    public WellRun ClearOf(WellRun other)
    {
        var shared = ConvexClip.Inside(other.Plan, Plan);
        if (shared.Count < 3 || ConvexClip.Area(shared) < 0.05) return this;
        // All of the other that lies in this one's width, also beyond its end.
        var taken = ConvexClip.LeftOf(ConvexClip.LeftOf(other.Plan, Edge.Line.OffsetLeft(Across.Back)), new(Edge.Line.OffsetLeft(Across.Front).Through, -Edge.Line.Along)).Select(Edge.Line.Station).ToList();
        return (taken.Min() + taken.Max()) / 2 < (From + To) / 2
            ? this with { From = taken.Max(), Begins = false, BeginsAtWall = false, Newels = [] } : this with { To = taken.Min(), Ends = false, EndsAtWall = false, Newels = [] };
    }

    private double? Crossing(double offset, Line2 other) => Edge.Line.OffsetLeft(offset).Cross(other) is { } p ? Edge.Line.Station(p) : null;
}
