using System.Collections.Immutable;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Assembly;

/// <summary>Strings and newels, and what is let into which of them.</summary>
internal sealed class Carriers
{
    private readonly Dictionary<string, ImmutableArray<string>> taking;
    private readonly Dictionary<string, int> lowest;

    private Carriers(Dictionary<string, ImmutableArray<string>> taking, Dictionary<string, int> lowest)
    {
        this.taking = taking;
        this.lowest = lowest;
    }

    /// <summary>Reads a kit's joints.</summary>
    public static Carriers Of(Kit kit)
    {
        var parts = kit.Parts.ToDictionary(p => p.Id);
        var taking = kit.Joints.Where(j => j.Depth > 0 && parts.TryGetValue(j.Female, out var f) && Is(f) && parts.TryGetValue(j.Male, out var m) && !Is(m))
            .GroupBy(j => j.Male).ToDictionary(g => g.Key, g => g.Select(j => j.Female).Distinct().Order(StringComparer.Ordinal).ToImmutableArray());
        var lowest = new Dictionary<string, int>();
        foreach (var (male, females) in taking)
            foreach (var female in females)
                if (parts[male].Step > 0) lowest[female] = Math.Min(lowest.GetValueOrDefault(female, int.MaxValue), parts[male].Step);
        // What takes no step stands with the lowest of what it is tenoned to.
        foreach (var part in kit.Parts.Where(p => Is(p) && !lowest.ContainsKey(p.Id)).ToList())
        {
            var met = kit.Joints.Where(j => j.Male == part.Id || j.Female == part.Id).Select(j => j.Male == part.Id ? j.Female : j.Male).Where(lowest.ContainsKey).Select(id => lowest[id]).ToList();
            lowest[part.Id] = met.Count > 0 ? met.Min() : int.MaxValue;
        }
        return new(taking, lowest);
    }

    /// <summary>Whether a part carries steps: a string or a newel.</summary>
    public static bool Is(Part part) => part.Kind is PartKind.WallString or PartKind.NewelString or PartKind.Newel;

    /// <summary>The strings and newels a part is let into.</summary>
    public ImmutableArray<string> Take(string id) => taking.GetValueOrDefault(id, []);

    /// <summary>The lowest step a string or newel takes: where in the order it is stood up.</summary>
    public int Lowest(string id) => lowest[id];
}
