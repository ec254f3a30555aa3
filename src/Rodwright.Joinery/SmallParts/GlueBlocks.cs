using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.SmallParts;

/// <summary>Glue blocks in the corner of each tread and the riser under it, equally spaced between the strings; a rounded bottom step has its own block.</summary>
internal static class GlueBlocks
{
    public static void Add(StairPlan plan, List<Part> parts, List<Joint> joints)
    {
        var (small, practice) = (plan.Job.SmallParts!, plan.Job.Practice);
        var side = small.BlockSide;
        var outline = Path2.Polygon(new Point2(0, -side), new(side, 0), new(0, 0));
        var count = small.BlocksFor(plan.ClearWidth);
        foreach (var k in plan.CarriedSteps.Where(k => k > 1 || plan.RoundedEnds.IsEmpty))
        {
            var riser = plan.Riser(k);
            var (length, along) = (riser.Inner.DistanceTo(riser.Outer), (riser.Outer - riser.Inner).Unit);
            for (var i = 0; i < count; i++)
            {
                var at = riser.Inner + ((i + 0.5) * length / count + small.BlockLength / 2) * along + practice.Riser * riser.Up;
                var frame = new Frame3(new(at.X, at.Y, k * plan.Rise - practice.Tread), Vector3.Level(riser.Up), Vector3.Up);
                var id = $"glue-block-{Number.Print(k, 0)}-{Number.Print(i + 1, 0)}";
                parts.Add(new()
                {
                    Id = id, Name = $"glue block {Number.Print(i + 1, 0)} of step {Number.Print(k, 0)}", Mark = "GB1", Kind = PartKind.GlueBlock, Step = k, Material = practice.Timber,
                    Blank = Blank.Around(outline.Bounds, small.BlockLength), Faces = [new("end", frame, outline, small.BlockLength)],
                });
                joints.Add(new($"{id}/tread-{Number.Print(k, 0)}", JointKind.Rubbed, id, $"tread-{Number.Print(k, 0)}", 0));
                joints.Add(new($"{id}/riser-{Number.Print(k, 0)}", JointKind.Rubbed, id, $"riser-{Number.Print(k, 0)}", 0));
            }
        }
    }
}
