using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// A part as it stands in the world: a plan ring between two heights, with the rounded nosing of a level board. Read back from the part's faces and frames
/// only, so that the proof sees what the sheets and files print.
/// </summary>
internal sealed class Prism
{
    private readonly Func<Point2, double>? behindNosing;
    private readonly double radius;

    private Prism(Part part, IReadOnlyList<Point2> plan, double bottom, double top, Func<Point2, double>? behindNosing, double radius)
    {
        Part = part;
        Plan = plan;
        Box = Box2.Of(plan);
        Bottom = bottom;
        Top = top;
        this.behindNosing = behindNosing;
        this.radius = radius;
    }

    public Part Part { get; }

    /// <summary>Ring in plan, anticlockwise.</summary>
    public IReadOnlyList<Point2> Plan { get; }

    /// <summary>Round the ring.</summary>
    public Box2 Box { get; }

    public double Bottom { get; }

    public double Top { get; }

    /// <summary>The prism of a tread, nosing piece or riser.</summary>
    public static Prism Of(Part part)
    {
        var isRiser = part.Kind is PartKind.Riser or PartKind.TaperedRiser;
        var face = isRiser ? part.Faces[1] : part.FaceSide; // the one that looks up
        var frame = face.Frame;
        var ring = face.Outline.Flattened().Select(p => frame.ToWorld(p).Plan).ToList();
        var top = frame.Origin.Z;
        var round = part.Cuts.FirstOrDefault(c => c.Kind == CutKind.RoundedEdge);
        if (round is null) return new(part, ring, top - face.Thickness, top, null, 0);
        if (round.Shape.EdgeCount > 1)
        {
            var bent = round.Shape.Moved(p => frame.ToWorld(p).Plan);
            return new(part, ring, top - face.Thickness, top, bent.DistanceTo, round.Depth);
        }
        var (a, b, _) = round.Shape.Edge(0);
        var line = Line2.Between(frame.ToWorld(a).Plan, frame.ToWorld(b).Plan);
        // Directed so that the board lies on its left.
        if (ring.Average(line.LeftOf) < 0) line = new(line.Through, -line.Along);
        return new(part, ring, top - face.Thickness, top, p => Math.Max(0, line.LeftOf(p)), round.Depth);
    }

    /// <summary>Lower and upper surface at a plan point: the rounded nosing draws them together near the front edge.</summary>
    public (double Low, double High) HeightsAt(Point2 p)
    {
        if (behindNosing is null) return (Bottom, Top);
        var behind = behindNosing(p);
        if (behind >= radius) return (Bottom, Top);
        var half = Math.Sqrt(Math.Max(0, radius * radius - (radius - behind) * (radius - behind)));
        return (Bottom + radius - half, Top - radius + half);
    }

    /// <summary>Where the ring lies along a vertical plane parallel to a face, w behind (negative) or before it: stretches of u.</summary>
    public List<(double From, double To)> Along(Frame3 face, double w) => Stretches(face, w, p => p.Face.X, p => p.W);

    /// <summary>Where the ring lies square to a face at u: stretches of w.</summary>
    public List<(double From, double To)> Into(Frame3 face, double u) => Stretches(face, u, p => p.W, p => p.Face.X);

    private List<(double From, double To)> Stretches(Frame3 face, double level, Func<(Point2 Face, double W), double> run, Func<(Point2 Face, double W), double> across)
    {
        var crossings = new List<double>();
        var previous = face.ToLocal(new(Plan[^1].X, Plan[^1].Y, face.Origin.Z));
        foreach (var point in Plan)
        {
            var local = face.ToLocal(new(point.X, point.Y, face.Origin.Z));
            var (a, b) = (across(previous) - level, across(local) - level);
            if (a >= 0 != b >= 0) crossings.Add(run(previous) + (run(local) - run(previous)) * a / (a - b));
            previous = local;
        }
        crossings.Sort();
        var stretches = new List<(double, double)>();
        for (var i = 0; i + 1 < crossings.Count; i += 2) stretches.Add((crossings[i], crossings[i + 1]));
        return stretches;
    }
}
