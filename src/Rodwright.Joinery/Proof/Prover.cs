using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// Proves a kit: each joint on both its parts in the world, no overlaps elsewhere, no cuts of a newel that meet, every part in its blank
/// (setting-out.md 10). Reads only what parts say of themselves: faces, frames, outlines, cuts.
/// </summary>
public static class Prover
{
    /// <summary>The proof of a kit.</summary>
    public static ProofReport Prove(Kit kit)
    {
        var parts = kit.Parts.ToDictionary(p => p.Id);
        var prisms = kit.Parts.Where(p => p.Kind.IsOfStep()).Select(Prism.Of).ToList();
        var steps = prisms.ToDictionary(p => p.Part.Id);
        var practice = kit.Plan.Job.Practice;
        var joints = kit.Joints.Select(j =>
        {
            var (male, female) = (parts[j.Male], parts[j.Female]);
            return j.Kind switch
            {
                JointKind.TreadHousing or JointKind.RiserHousing => HousingProof.Prove(j, steps[j.Male], female),
                JointKind.Tenon => TenonProof.Prove(j, male, female, practice.Tenon.MorticeClearance, practice.Tenon.Draw, kit.Plan.Units),
                JointKind.Corner => MeetingProof.Corner(j, male, female),
                JointKind.RiserToTread => MeetingProof.RiserToTread(j, steps[j.Male], steps[j.Female], practice.RiserOnTread),
                JointKind.BlockToRiser => ContactProof.Prove(j, male, female, "glued round its block", StatedContacts.Of(kit.Plan, j)),
                JointKind.BlockToNewel => ContactProof.Prove(j, male, female, "screwed", StatedContacts.Of(kit.Plan, j)),
                JointKind.WedgesInSlot => ContactProof.Prove(j, male, female, "wedged", StatedContacts.Of(kit.Plan, j)),
                JointKind.RailTenon => RailTenonProof.Prove(j, male, female, practice.Tenon.MorticeClearance, practice.Tenon.Draw, kit.Plan.Units),
                JointKind.RailOnString => RailProof.OnString(j, male, female),
                JointKind.UnderString => RailProof.UnderString(j, male, female),
                JointKind.RailOnNosing => LandingEdgeProof.RailOnNosing(j, male, female),
                JointKind.NosingOnApron => LandingEdgeProof.NosingOnApron(j, male, female),
                JointKind.EdgeCorner => LandingEdgeProof.Corner(j, male, female),
                JointKind.RailToNewel => RailProof.ToNewel(j, male, female),
                JointKind.InGroove => RailProof.InGroove(j, male, female),
                JointKind.BracketToRail => RailProof.BracketToRail(j, male, female),
                JointKind.WedgeDriven => SmallPartProof.WedgeDriven(j, male, female, steps),
                JointKind.Rubbed => SmallPartProof.Rubbed(j, male, steps[j.Female]),
                JointKind.PegInBore => SmallPartProof.PegInBore(j, male, female),
                JointKind.BracketToCarriage => CarriageProof.Beside(j, male, female),
                JointKind.BracketUnderTread => CarriageProof.UnderTread(j, male, steps[j.Female]),
                JointKind.CarriageUnderRiser => CarriageProof.UnderRiser(j, male, steps[j.Female]),
                JointKind.CapOnNewel => RailProof.CapOnNewel(j, male, female),
                _ => MeetingProof.TreadOnRiser(j, steps[j.Male], steps[j.Female]),
            };
        });
        var height = kit.Plan.Job.Survey.Height;
        var sum = prisms.Last(p => p.Part.Kind == PartKind.NosingPiece).Top;
        return new(
            [.. joints, .. Unhoused(kit)],
            [.. ClashProof.BetweenParts(kit, prisms), .. FittedClashes.Of(kit, prisms)],
            [.. kit.Parts.Where(p => p.Kind is PartKind.Newel or PartKind.WallNewel).SelectMany(ClashProof.InNewel)],
            [.. kit.Parts.Select(InBlank)],
            new(height, sum, Math.Abs(height - sum) < Tolerance.Joint));
    }

    /// <summary>Every tread has an end housed on each side: a tread without one is a joint that does not exist.</summary>
    private static IEnumerable<JointProof> Unhoused(Kit kit)
    {
        foreach (var tread in kit.Parts.Where(p => p.Kind is PartKind.Tread or PartKind.TaperedTread))
        {
            foreach (var (side, boundary) in new[] { ("inner", kit.Plan.Inner), ("outer", kit.Plan.Outer) })
            {
                var carriers = boundary.Edges.Select(e => e.Carrier).ToHashSet();
                if (!kit.Joints.Any(j => j.Male == tread.Id && carriers.Contains(j.Female)))
                    yield return new($"{tread.Id}/{side}", "housed", tread.Id, side + " side", double.PositiveInfinity, kit.Plan.Job.Practice.Housing, 0, "no housing takes this end", false);
            }
        }
    }

    private static BlankProof InBlank(Part part)
    {
        var blank = part.Blank;
        var outside = 0.0;
        if (part.Kind == PartKind.Newel)
        {
            outside = Math.Max(part.FaceSide.Outline.Bounds.Height - blank.Length, part.FaceSide.Outline.Bounds.Width - blank.Width);
            return new(part.Id, Math.Max(0, outside), outside <= Tolerance.Joint);
        }
        if (part.Kind == PartKind.BentRiser)
        {
            // Each end of the outline is as thick as the board in all; half of what is left runs along the face, half along the back.
            outside = Math.Abs((part.FaceSide.Outline.Length - 2 * blank.Thickness) / 2 - blank.Length);
            return new(part.Id, outside, outside <= Tolerance.Joint);
        }
        var rooms = blank.JointedUp.Select(j => j.Place).Prepend(new(0, 0, blank.Length, blank.Width)).ToList();
        foreach (var point in part.FaceSide.Outline.Flattened(0.02).Select(blank.OnBoard))
            outside = Math.Max(outside, rooms.Min(r => Math.Max(Math.Max(r.MinX - point.X, point.X - r.MaxX), Math.Max(r.MinY - point.Y, point.Y - r.MaxY))));
        return new(part.Id, Math.Max(0, outside), outside <= 0.05);
    }
}
