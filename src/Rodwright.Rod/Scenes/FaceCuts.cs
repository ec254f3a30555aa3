using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;

namespace Rodwright.Rod.Scenes;

/// <summary>Which cut each face of a part's solid was made by.</summary>
internal static class FaceCuts
{
    /// <summary>How far before a face the cutter is looked for, mm.</summary>
    private const double Before = 0.02;

    /// <summary>How far within the edge of a face, mm.</summary>
    private const double Within = 0.05;

    /// <summary>
    /// For each face of the solid the number of its cut among the part's cuts, counted from 1; 0 for the outside and for rounded edges, which are the piece's own.
    /// </summary>
    public static ImmutableArray<int> Of(PlacedSolid solid)
    {
        var part = solid.Part;
        var cuts = part.Cuts.Select((cut, i) => new Room(i + 1, part.Faces[cut.Face].Frame, cut))
            .Where(r => r.Cut.Kind != CutKind.RoundedEdge).OrderBy(r => r.Size).ToList();
        return [.. solid.Shape.Faces.Select(f => NumberOf(f))];

        int NumberOf(SolidFace face)
        {
            var local = Just(solid.Shape, face);
            var point = solid.Frame.ToWorld(new(local.X, local.Y), local.Z);
            return cuts.Find(c => c.Holds(point))?.Number ?? 0;
        }
    }

    /// <summary>A point just before the face and just within the middle of its longest edge.</summary>
    private static Point3 Just(Solid solid, SolidFace face)
    {
        var outer = face.Outer;
        var i = Enumerable.Range(0, outer.Length).MaxBy(k => solid.Vertices[outer[k]].DistanceTo(solid.Vertices[outer[(k + 1) % outer.Length]]));
        var (a, b) = (solid.Vertices[outer[i]], solid.Vertices[outer[(i + 1) % outer.Length]]);
        var edge = b - a;
        return a + 0.5 * edge + Within / edge.Length * face.Normal.Cross(edge) + Before * face.Normal;
    }

    /// <summary>The room a cut takes.</summary>
    private sealed record Room(int Number, Frame3 Frame, Cut Cut)
    {
        /// <summary>mm³.</summary>
        public double Size { get; } = Cut.Shape.Area * Cut.Depth;

        public bool Holds(Point3 world)
        {
            var (face, w) = Frame.ToLocal(world);
            return w <= Tolerance.Joint && w >= -Cut.Depth - Tolerance.Joint && Cut.Shape.Bounds.Grown(Tolerance.Joint).Overlaps(new(face.X, face.Y, face.X, face.Y), -Tolerance.Joint) && Cut.Shape.Holds(face);
        }
    }
}
