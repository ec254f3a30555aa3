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

    /// <summary>Whether it goes on round the corner before it.</summary>
    public bool Begins => Edge.Before is not null && From < Edge.From + Tolerance.Joint;

    /// <summary>Whether it goes on round the corner after it.</summary>
    public bool Ends => Edge.After is not null && To > Edge.To - Tolerance.Joint;

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
        : Edge.WallBefore is { } wall && From < Edge.From + Tolerance.Joint ? AtWall(offset, wall, Math.Max) ?? From : From;

    private double End(double offset, double neighbour) => Ends ? Crossing(offset, Edge.After!.Value.OffsetLeft(neighbour)) ?? To
        : Edge.WallAfter is { } wall && To > Edge.To - Tolerance.Joint ? AtWall(offset, wall, Math.Min) ?? To : To;

    private double? AtWall(double offset, Line2 wall, Func<double, double, double> clear)
    {
        if (Crossing(Across.Front, wall) is not { } front || Crossing(Across.Back, wall) is not { } back) return null;
        return Math.Abs(front - back) < Square ? clear(front, back) : Crossing(offset, wall);
    }

    private double? Crossing(double offset, Line2 other) => Edge.Line.OffsetLeft(offset).Cross(other) is { } p ? Edge.Line.Station(p) : null;
}
