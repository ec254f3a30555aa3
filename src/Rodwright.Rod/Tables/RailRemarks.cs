using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Pieces;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Rod.Tables;

/// <summary>What the parts list says of the pieces of a balustrade.</summary>
internal static class RailRemarks
{
    public static IEnumerable<string> Of(Stair stair, Part part)
    {
        if (part.Kind == PartKind.NewelCap)
        {
            yield return stair.Job.Balustrade?.Cap.Shape == CapShape.Pyramid ? "pyramid on a square edge" : "flat";
            foreach (var recess in part.Cuts.Where(c => c.Kind == CutKind.Recess)) yield return $"recessed {stair.Units.Print(recess.Shape.Bounds.Height)} for the newel";
            yield break;
        }
        if (part.Kind == PartKind.WallNewel)
        {
            yield return "half a newel, its back on the wall";
            yield break;
        }
        var under = stair.Kit.Joints.FirstOrDefault(j => j.Kind == JointKind.UnderString && j.Male == part.Id);
        if (part.Kind is PartKind.Handrail or PartKind.BaseRail or PartKind.WallRail)
        {
            // The upper end is on the right where the board's length climbs that way.
            var up = part.Blank.Grain.Y > 0;
            if (under is not null) yield return $"upper end scribed under {stair.Kit.Find(under.Female).Mark}, {string.Join(" and ", PieceEnds.Bevels(part, up).Select(b => Number.Print(b.Degrees, 2) + "°"))} off square";
            if (PieceEnds.Bevels(part, !up) is [var plumb, ..] && plumb.Degrees > 0.01) yield return $"{(under is null ? "ends" : "lower end")} cut plumb at {Number.Print(plumb.Degrees, 2)}°";
        }
        else if (part.Kind == PartKind.Baluster)
        {
            var (foot, head) = (PieceEnds.Bevels(part, false), PieceEnds.Bevels(part, true));
            if (under is null && foot is [{ Degrees: > 0.01 } one]) yield return $"both ends bevelled {Number.Print(one.Degrees, 2)}°";
            else if (under is not null) yield return $"foot bevelled {Of(foot)}, head {Of(head)} under {stair.Kit.Find(under.Female).Mark}";
        }
        else if (BevelOf(part) is { Degrees: > 0.01 } pitch) yield return $"ends cut plumb at {Number.Print(pitch.Degrees, 2)}°";
        if (part.Kind == PartKind.Baluster && under is null && ShortPoint(part) is var length && length < part.Blank.Length - Tolerance.Print) yield return $"{stair.Units.Print(length)} along each side, {stair.Units.Print(part.Blank.Length)} between long points";
        foreach (var groove in part.Cuts.Where(c => c.Kind == CutKind.Groove).Take(1)) yield return $"grooved {stair.Units.Print(groove.Depth - groove.Beneath)} × {stair.Units.Print(stair.Job.Balustrade?.Groove ?? 0)} for balusters";
        var tenons = part.Cuts.Where(c => c.Kind == CutKind.Cheek).Select(c => c.Joint).Distinct().Count();
        if (tenons > 0) yield return tenons == 1 ? "tenoned into its newel" : "tenoned into the newels";

        static string Of(IReadOnlyList<Angle> bevels) => bevels.Count == 0 ? "square" : string.Join(" and ", bevels.Select(b => Number.Print(b.Degrees, 2) + "°"));
    }

    /// <summary>The slope of the longest edge that is not plumb; of a baluster that of its ends.</summary>
    private static Angle BevelOf(Part part)
    {
        var edges = Enumerable.Range(0, part.FaceSide.Outline.EdgeCount).Select(part.FaceSide.Outline.Edge).Where(e => e.Bulge == 0 && Math.Abs(e.To.X - e.From.X) > Tolerance.Joint).ToList();
        if (edges.Count == 0) return default;
        var (from, to, _) = edges.MaxBy(e => e.From.DistanceTo(e.To));
        return Angle.OfPitch(Math.Abs(to.Y - from.Y), Math.Abs(to.X - from.X));
    }

    /// <summary>Length of a baluster along its left side.</summary>
    private static double ShortPoint(Part part)
    {
        var left = part.FaceSide.Outline.Bounds.MinX;
        var side = part.FaceSide.Outline.Vertices.Where(v => Math.Abs(v.At.X - left) < Tolerance.Joint).Select(v => v.At.Y).ToList();
        return side.Max() - side.Min();
    }
}
