using System.Collections.Immutable;
using Rodwright.Rod.Stages;

namespace Rodwright.Workshop.Picks;

/// <summary>How a thing is found on the rod: the distances of its lines, as the stages tell them. Lines found alike, at the same distances, are told once.</summary>
internal static class StageFacts
{
    // Corners of a tread are told with the tread.
    private const string Corners = "outline";

    /// <summary>Those distances that are not told yet.</summary>
    public static IEnumerable<Fact> Beyond(PickBench bench, string id, ImmutableArray<Fact> known)
    {
        var figures = known.Select(f => f.Value).ToHashSet();
        return Of(bench, id).Where(f => !figures.Contains(f.Value));
    }

    private static IEnumerable<Fact> Of(PickBench bench, string id)
    {
        var told = new HashSet<(string, string, double, string)>();
        foreach (var stage in bench.Stages.Stages)
        {
            // On the board of a tapered step the faces of strings and newels are told for the step's sake.
            var other = stage.Bench == Bench.TaperedStep && stage.Subject != id;
            foreach (var line in stage.Lines)
            {
                if (line.Of != id || line.Telling?.Id == Corners || (other && bench.Part(id) is not null && !id.StartsWith("riser-", StringComparison.Ordinal))) continue;
                var name = line.Name + (other ? $", on the board of {bench.Part(stage.Subject)?.Name}" : "");
                foreach (var m in line.Instruction.Measures)
                {
                    if (line.Telling is { } telling && !told.Add((stage.Id + telling.Id, m.Datum, m.Distance, m.Way))) continue;
                    yield return bench.Mm($"{name}: from {m.Datum.TrimEnd(',')} {m.Way}", m.Distance, Source(line.Instruction));
                }
            }
        }
    }

    private static string Source(Instruction how) => Why.Rule(how.Source.Length > 0 ? $"{how.Why} ({how.Source})" : how.Why);
}
