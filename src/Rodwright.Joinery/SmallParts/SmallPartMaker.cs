using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.SmallParts;

/// <summary>
/// Makes wedges, glue blocks and pegs. Each is a part of its own in its place, so that solids and proof have it where it is driven; equal ones share a mark, by which lists count them. Left-hand frame.
/// </summary>
internal static class SmallPartMaker
{
    /// <summary>Adds the pieces to the parts and gives their joints.</summary>
    public static List<Joint> Add(StairPlan plan, IReadOnlyCollection<StringBoard> boards, List<Part> parts)
    {
        var joints = new List<Joint>();
        Wedges.Add(plan, boards, parts, joints);
        GlueBlocks.Add(plan, parts, joints);
        Pegs.Add(plan, parts, joints);
        return joints;
    }
}
