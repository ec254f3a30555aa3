using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Makes the caps of newels: a square, flat or with a pyramid on it, recessed for the newel's head; over half a newel half of it, flush with the wall.</summary>
internal static class CapMaker
{
    /// <summary>The cap of a newel; null where none is wanted.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="newel">The newel: a whole one, one with a split, or one on a wall.</param>
    /// <param name="centre">Middle of the whole newel in plan.</param>
    /// <param name="split">The way the half lies that is missing; null for a whole newel.</param>
    public static Part? Make(StairPlan plan, Part newel, Point2 centre, Vector2? split)
    {
        var (cap, side) = (plan.Job.Balustrade!.Cap, plan.Job.Practice.Newel);
        if (cap.Shape == CapShape.None) return null;
        var (half, high) = (side / 2 + cap.Overhang, cap.Edge + (cap.Shape == CapShape.Pyramid ? cap.Rise : 0));
        var bottom = newel.FaceSide.Frame.Origin.Z + newel.FaceSide.Outline.Bounds.MaxY - cap.Recess;
        // Looks at the room: away from the wall behind a half newel.
        var front = split is { } s ? -s : new Vector2(0, -1);
        var right = front.Left;
        var deep = split is null ? 2 * half : half;
        var faces = ImmutableArray.Create(new PartFace("front", FrameOf(front, right), Profile(-half, half, half), deep));
        if (cap.Shape == CapShape.Pyramid) faces = faces.Add(new("side", FrameOf(right, -front), Profile(-half, deep - half, half), 2 * half));
        return new()
        {
            Id = "cap-" + newel.Id, Name = "cap of the " + newel.Name, Mark = newel.Mark.Replace('N', 'C'), Kind = PartKind.NewelCap, Material = plan.Job.Practice.Timber,
            Blank = new(2 * half, high, deep, new(-half, 0), new(1, 0), []),
            Faces = faces,
            Cuts = cap.Recess > 0
                ? [new("recess", CutKind.Recess, 0, Path2.Rectangle(-side / 2, 0, side / 2, cap.Recess), split is null ? half + side / 2 : half, $"{newel.Id}/cap-{newel.Id}") { Beneath = cap.Overhang }]
                : [],
        };

        Frame3 FrameOf(Vector2 looks, Vector2 u)
        {
            var origin = centre + half * looks;
            return new(new(origin.X, origin.Y, bottom), Vector3.Level(u), Vector3.Up);
        }

        // From one side to the other of what is there of the whole profile: its edge, and the slopes that meet in the middle.
        Path2 Profile(double from, double to, double whole)
        {
            var points = new List<Point2> { new(from, 0), new(to, 0), new(to, HeightAt(to)) };
            if (cap.Shape == CapShape.Pyramid && from < -Tolerance.Same && to > Tolerance.Same) points.Add(new(0, high));
            points.Add(new(from, HeightAt(from)));
            return Path2.Polygon(points);

            double HeightAt(double u) => cap.Shape == CapShape.Pyramid ? cap.Edge + cap.Rise * (1 - Math.Abs(u) / whole) : cap.Edge;
        }
    }
}
