using Rodwright.Rod.Stages;

namespace Rodwright.Workshop.Picks;

/// <summary>How a thing is found on the rod: the distances of its lines, as the stages tell them.</summary>
internal static class StageFacts
{
    public static IEnumerable<Fact> Of(PickBench bench, string id)
    {
        foreach (var line in bench.Stages.Lines)
        {
            if (line.Of != id) continue;
            foreach (var m in line.Instruction.Measures)
                yield return Facts.Mm($"{line.Name}: from {m.Datum.TrimEnd(',')} {m.Way}", m.Distance, Source(line.Instruction));
        }
    }

    private static string Source(Instruction how) => Why.Rule(how.Source.Length > 0 ? $"{how.Why} ({how.Source})" : how.Why);
}
