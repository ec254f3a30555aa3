using Rodwright.Joinery.Parts;

namespace Rodwright.Workshop.Picks;

/// <summary>A piece fitted to the stair: rail, baluster, cap and the like.</summary>
internal static class PiecePick
{
    public static Pick? Of(PickBench bench, string id)
    {
        if (bench.Part(id) is not { } part || part.Kind.IsCarrier()) return null;
        var others = bench.JointsOf(id).Select(j => j.Male == id ? j.Female : j.Male);
        return Draft.Pick(id, part.Name, $"{PieceFacts.Word(part.Kind)}, mark {part.Mark}", [.. others, .. Relations.CutsFor(bench, id)], [.. PieceFacts.Of(bench, part)]);
    }
}
