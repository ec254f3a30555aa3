using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Cuts the mortices of handrails in the newels, and their pegs' bores from a side where nothing else is in the way.</summary>
internal static class RailMortices
{
    // How far a bore goes on behind the tenon, mm (common practice).
    private const double Behind = 6;

    /// <summary>The newel with the joints of its rails added.</summary>
    public static Part Cut(StairPlan plan, Part newel, IReadOnlyCollection<RailEnd> ends, List<Finding> findings)
    {
        var foot = newel.FaceSide.Frame.Origin.Z;
        foreach (var end in ends) newel = newel with { Cuts = [.. newel.Cuts, Mortice(plan, newel, end)] };
        foreach (var end in ends)
        {
            // From the side away from the stair where that is free, so that it is seen least.
            var back = -Upright.Of(end.Rail).Front;
            ImmutableArray<Cut> bores = [.. new[] { back, -back }.Select(side => Bore(plan, newel, end, side, foot)).OfType<Cut>()];
            if (bores.IsEmpty) continue;
            var free = bores.FirstOrDefault(b => newel.Cuts.All(c => c.Joint == end.Joint || ClashProof.Shared(newel, b, c) <= Tolerance.Joint));
            newel = newel with { Cuts = [.. newel.Cuts, free ?? bores[0]] };
            if (free is null) findings.Add(new("RW4104", Severity.Breach, end.Rail.Name, $"its peg meets another joint in {newel.Name}", "a smaller peg, thinner tenons, or a larger newel"));
        }
        return newel;
    }

    /// <summary>The mortice for a rail's tenon.</summary>
    public static Cut Mortice(StairPlan plan, Part newel, RailEnd end)
    {
        var (foot, half) = (newel.FaceSide.Frame.Origin.Z, plan.Job.Balustrade!.Tenon.Thickness / 2);
        var face = Looking(newel, -end.Points * end.Rail.Centre.Along);
        var at = end.Rail.Centre.At(end.Shoulder);
        var u = newel.Faces[face].Frame.ToLocal(new(at.X, at.Y, foot)).Face.X;
        return new($"mortice-{end.Rail.Id}", CutKind.Mortice, face, Path2.Rectangle(u - half, end.Bottom - foot, u + half, end.Top - foot), end.Length + plan.Job.Practice.Tenon.MorticeClearance, end.Joint);
    }

    private static Cut? Bore(StairPlan plan, Part newel, RailEnd end, Vector2 side, double foot)
    {
        var face = Looking(newel, side, orNone: true);
        if (face < 0) return null;
        var (frame, practice) = (newel.Faces[face].Frame, plan.Job.Balustrade!);
        var at = end.Rail.Centre.At(end.Shoulder + end.Points * end.PegBack);
        var (local, w) = frame.ToLocal(new(at.X, at.Y, foot));
        var depth = Math.Min(-w + practice.Tenon.Thickness / 2 + Behind, newel.Faces[face].Thickness - plan.Job.Practice.Tenon.Between);
        return new($"peg-{end.Rail.Id}", CutKind.Bore, face, Path2.Circle(new(local.X, end.PegAt - foot), practice.Tenon.Peg / 2), depth, end.Joint);
    }

    /// <summary>The face that looks a way in plan; -1 where there is none and none is asked for.</summary>
    internal static int Looking(Part newel, Vector2 way, bool orNone = false)
    {
        for (var i = 0; i < newel.Faces.Length; i++) if (newel.Faces[i].Frame.W.Dot(Vector3.Level(way)) > 0.9) return i;
        return orNone ? -1 : throw new System.Diagnostics.UnreachableException($"no face of {newel.Id} looks at its rail");
    }
}
