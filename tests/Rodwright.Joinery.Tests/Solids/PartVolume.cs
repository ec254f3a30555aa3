using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Tests.Solids;

/// <summary>
/// Volume of a part worked out without making a solid: slice by slice, by areas of regions or lengths of stretches, with arcs as arcs wherever they lie in
/// a face. It shares nothing with the solid's making but the description.
/// </summary>
internal static class PartVolume
{
    public static double Of(Part part) => part.Kind switch
    {
        PartKind.Newel => Newel(part),
        PartKind.Riser or PartKind.TaperedRiser => part.Faces[1].Outline.Area * part.Faces[1].Thickness,
        PartKind.Apron when part.Faces.Length == 2 => part.Faces[1].Outline.Area * part.Faces[1].Thickness,
        PartKind.NewelCap when part.Faces.Length == 2 => Pyramid(part),
        // All arcs: what its chords, at most 0.005 from them, hold.
        PartKind.Peg => ConvexClip.Area(part.FaceSide.Outline.Flattened()) * part.FaceSide.Thickness,
        PartKind.WallNewel => WallNewel(part),
        // Sockets are cut from the end, where nothing else is.
        PartKind.WallString when part.Faces.Length == 2 => ByDepth(part with { Cuts = [.. part.Cuts.Where(c => c.Face == 0)] }) - part.Cuts.Where(c => c.Face == 1).Sum(c => c.Shape.Area * c.Depth),
        _ when part.Cuts.Any(c => c is { Kind: CutKind.RoundedEdge, Shape.EdgeCount: > 1 }) => RoundedRound(part),
        _ when part.Cuts.Any(c => c.Kind == CutKind.RoundedEdge) => Rounded(part),
        _ => ByDepth(part),
    };

    /// <summary>One face: between two neighbouring depths the same region is cut all through. Area left = area of outline and cuts together, less the cuts.</summary>
    private static double ByDepth(Part part)
    {
        var face = part.FaceSide;
        var depths = part.Cuts.Select(c => Math.Min(c.Depth, face.Thickness)).Concat(part.Cuts.Select(c => c.Beneath)).Append(0).Append(face.Thickness).Distinct().Order().ToList();
        var volume = 0.0;
        for (var i = 0; i + 1 < depths.Count; i++)
        {
            var cuts = part.Cuts.Where(c => c.Depth > depths[i] + 1e-9 && c.Beneath < depths[i] + 1e-9).Select(c => c.Shape).ToList();
            var taken = cuts.Count == 0 ? 0 : Area(cuts);
            volume += (depths[i + 1] - depths[i]) * (Area([.. cuts, face.Outline]) - taken);
        }
        return volume;
    }

    /// <summary>A cap: its square edge, the pyramid on it a third of its base by its rise, less the recess; over half a newel half of both.</summary>
    private static double Pyramid(Part part)
    {
        var (front, recess) = (part.FaceSide.Outline.Bounds, part.Cuts.Single());
        var edge = part.FaceSide.Outline.Vertices.Where(v => Math.Abs(v.At.X - front.MaxX) < 1e-9).Max(v => v.At.Y);
        var plan = front.Width * part.FaceSide.Thickness;
        return plan * edge + plan * (front.Height - edge) / 3 - recess.Shape.Area * (recess.Depth - recess.Beneath);
    }

    /// <summary>A half newel on a wall: its box, less mortice and bore; the bore passes right through the mortice.</summary>
    private static double WallNewel(Part part)
    {
        var (mortice, bore) = (part.Cuts.Single(c => c.Kind == CutKind.Mortice), part.Cuts.Single(c => c.Kind == CutKind.Bore));
        return part.FaceSide.Outline.Area * part.FaceSide.Thickness - mortice.Shape.Area * mortice.Depth - bore.Shape.Area * (bore.Depth - mortice.Shape.Bounds.Width);
    }

    private static double Area(IReadOnlyList<Path2> paths) => Region.Union(paths).Sum(p => p.Area);

    /// <summary>A tread: its whole board less what lies before the nosing line, and less what the round takes along each line parallel to it.</summary>
    private static double Rounded(Part part)
    {
        var face = part.FaceSide;
        var ring = face.Outline.Flattened();
        var radius = part.Cuts.Single().Depth;
        var behind = ConvexClip.LeftOf(ring, new Line2(Point2.Origin, new(1, 0)));
        var volume = ConvexClip.Area(behind) * face.Thickness;
        var stops = ring.Select(p => p.Y).Where(v => v > 0 && v < radius).Append(0).Append(radius).Distinct().Order().ToList();
        for (var i = 0; i + 1 < stops.Count; i++)
            // v = radius (1 - cos a): what is taken is smooth in a.
            volume -= Gauss(Math.Acos(1 - stops[i] / radius), Math.Acos(Math.Max(-1, 1 - stops[i + 1] / radius)), 8, a =>
            {
                var v = radius * (1 - Math.Cos(a));
                return 2 * (radius - radius * Math.Sin(a)) * Stretches(ring, v).Sum(s => s.To - s.From) * radius * Math.Sin(a);
            });
        return volume;
    }

    /// <summary>A tread with a bent nosing, by Pappus: what the round takes in section, carried along the way of its centroid.</summary>
    private static double RoundedRound(Part part)
    {
        var (face, cut) = (part.FaceSide, part.Cuts.Single());
        var taken = cut.Depth * cut.Depth * (1 - Math.PI / 4);
        var centroid = cut.Depth * (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
        var way = 0.0;
        for (var i = 0; i < cut.Shape.EdgeCount; i++)
        {
            var (from, to, bulge) = cut.Shape.Edge(i);
            way += new Path2([new(from, bulge), new(to)], false).Length - centroid * 4 * Math.Abs(Math.Atan(bulge));
        }
        return face.Outline.Area * face.Thickness - 2 * taken * way;
    }

    /// <summary>A newel: at each height a square less rectangles.</summary>
    private static double Newel(Part part)
    {
        var (side, height) = (part.Blank.Width, part.Blank.Length);
        var cuts = part.Cuts.Select(c => (c.Face, c.Depth, Ring: c.Shape.Flattened(0.0001), c.Shape)).ToList();
        var stops = cuts.SelectMany(c => c.Ring.Count > 60 ? c.Shape.Vertices.Select(v => v.At.Y).Append(c.Shape.Bounds.MinY).Append(c.Shape.Bounds.MaxY) : c.Ring.Select(p => p.Y))
            .Append(0).Append(height).Where(v => v >= 0 && v <= height).Distinct().Order().ToList();
        var volume = 0.0;
        for (var i = 0; i + 1 < stops.Count; i++)
            volume += Gauss(stops[i], stops[i + 1], stops[i + 1] - stops[i] > 1 ? 12 : 2, v => side * side - Taken(v));
        return volume;

        double Taken(double v)
        {
            var boxes = new List<Box2>();
            foreach (var (face, depth, ring, _) in cuts)
                foreach (var (from, to) in Stretches(ring, v))
                {
                    // Faces in the order S E N W, anticlockwise round the post; x to the east and y to the north from the south-west arris.
                    var d = Math.Min(depth, side);
                    boxes.Add(Clip(Standing(part, face, from, to, d, side), side));
                }
            return UnionArea(boxes);
        }
    }

    private static Box2 Standing(Part part, int face, double from, double to, double depth, double side)
    {
        var frame = part.Faces[face].Frame;
        var origin = part.Faces.Select(f => f.Frame.Origin.Plan).Aggregate(new Point2(double.PositiveInfinity, double.PositiveInfinity), (a, b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y)));
        return Box2.Of([frame.ToWorld(new(from, 0)).Plan, frame.ToWorld(new(to, 0), -depth).Plan]) is var b
            ? new(b.MinX - origin.X, b.MinY - origin.Y, b.MaxX - origin.X, b.MaxY - origin.Y) : default;
    }

    private static Box2 Clip(Box2 b, double side) => new(Math.Max(0, b.MinX), Math.Max(0, b.MinY), Math.Min(side, b.MaxX), Math.Min(side, b.MaxY));

    private static double UnionArea(List<Box2> boxes)
    {
        var xs = boxes.SelectMany(b => new[] { b.MinX, b.MaxX }).Distinct().Order().ToList();
        var area = 0.0;
        for (var i = 0; i + 1 < xs.Count; i++)
        {
            var (covered, end) = (0.0, double.NegativeInfinity);
            foreach (var b in boxes.Where(b => b.MinX <= xs[i] && b.MaxX >= xs[i + 1]).OrderBy(b => b.MinY))
            {
                covered += Math.Max(0, b.MaxY - Math.Max(end, b.MinY));
                end = Math.Max(end, b.MaxY);
            }
            area += covered * (xs[i + 1] - xs[i]);
        }
        return area;
    }

    private static List<(double From, double To)> Stretches(IReadOnlyList<Point2> ring, double v)
    {
        var crossings = new List<double>();
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
            if (ring[i].Y > v != ring[j].Y > v) crossings.Add(ring[i].X + (ring[j].X - ring[i].X) * (v - ring[i].Y) / (ring[j].Y - ring[i].Y));
        crossings.Sort();
        return [.. Enumerable.Range(0, crossings.Count / 2).Select(k => (crossings[2 * k], crossings[2 * k + 1]))];
    }

    private static double Gauss(double from, double to, int pieces, Func<double, double> f)
    {
        var (sum, h) = (0.0, (to - from) / pieces);
        for (var i = 0; i < pieces; i++)
        {
            var m = from + (i + 0.5) * h;
            var d = h / 2 * Math.Sqrt(3.0 / 5);
            sum += h / 18 * (5 * f(m - d) + 8 * f(m) + 5 * f(m + d));
        }
        return sum;
    }
}
