using System.Collections.Immutable;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Joints;

/// <summary>Lists the joints of a kit: one for each pair of parts of which one is cut for the other, and the meetings of treads and risers.</summary>
internal static class JointList
{
    public static ImmutableArray<Joint> Of(StairPlan plan, IReadOnlyList<Part> parts, IReadOnlyDictionary<string, double> reaches)
    {
        var joints = ImmutableArray.CreateBuilder<Joint>();
        foreach (var female in parts)
        {
            foreach (var group in female.Cuts.Where(c => c.Joint.EndsWith("/" + female.Id, StringComparison.Ordinal)).GroupBy(c => c.Joint))
            {
                var male = group.Key[..group.Key.IndexOf('/', StringComparison.Ordinal)];
                var first = group.First();
                var kind = first.Kind switch
                {
                    CutKind.Recess => JointKind.CapOnNewel,
                    CutKind.Mortice when male.Contains("rail", StringComparison.Ordinal) => JointKind.RailTenon,
                    CutKind.CornerHousing or CutKind.Dovetail => JointKind.Corner,
                    CutKind.Housing => male.StartsWith("riser", StringComparison.Ordinal) ? JointKind.RiserHousing : JointKind.TreadHousing,
                    _ => JointKind.Tenon,
                };
                joints.Add(new(group.Key, kind, male, female.Id, reaches.GetValueOrDefault(group.Key, first.Kind == CutKind.Dovetail ? first.Shape.Bounds.Width : first.Depth)));
            }
        }
        for (var k = 1; k <= plan.Risers; k++)
        {
            var above = plan.Steps[k - 1] is StepKind.Landing or StepKind.Floor ? $"nosing-{k}" : $"tread-{k}";
            joints.Add(new($"{above}/riser-{k}", JointKind.TreadOnRiser, above, $"riser-{k}", 0));
            if (k > 1 && plan.Steps[k - 2] is StepKind.Straight or StepKind.Tapered)
                joints.Add(new($"riser-{k}/tread-{k - 1}", JointKind.RiserToTread, $"riser-{k}", $"tread-{k - 1}", 0));
        }
        foreach (var end in plan.RoundedEnds)
        {
            var side = end.Inner ? "" : "-outer";
            joints.Add(new($"riser-1/block-1{side}", JointKind.BlockToRiser, "riser-1", $"block-1{side}", 0));
            joints.Add(new($"tread-1/block-1{side}", JointKind.TreadOnRiser, "tread-1", $"block-1{side}", 0));
            joints.Add(new($"block-1{side}/{end.Newel}", JointKind.BlockToNewel, $"block-1{side}", end.Newel, 0));
            joints.Add(new($"wedges-1{side}/block-1{side}", JointKind.WedgesInSlot, $"wedges-1{side}", $"block-1{side}", 0));
            joints.Add(new($"wedges-1{side}/riser-1", JointKind.WedgesInSlot, $"wedges-1{side}", "riser-1", 0));
        }
        return joints.ToImmutable();
    }
}
