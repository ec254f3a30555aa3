using Rodwright.Geometry;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Picks;

/// <summary>What the regulation says to a thing: each clause that measured it, its limit and how it came out there.</summary>
internal static class ClauseFacts
{
    /// <summary>Clauses by where they were measured: each measurement there, not only the stair's worst.</summary>
    public static IEnumerable<Fact> At(PickBench bench, Func<string, bool> where, Func<string, bool>? rule = null)
    {
        foreach (var check in bench.Stair.Regulation.Checks)
        {
            if (check.Measured is null || !(rule?.Invoke(check.Clause.Rule.Id) ?? true)) continue;
            foreach (var measured in check.Clause.Rule.Measure(bench.Plan).Where(m => where(m.Where)))
                yield return Facts.Words($"{Bare(check.Clause.Rule.Title)}: {measured.Where}", Outcome(check, measured.Value), Source(bench, check));
        }
    }

    private static string Outcome(ClauseCheck check, double value)
    {
        var said = check.Clause.Rule.Print(value, check.Units);
        if (check.Range is { Least: null, Most: null }) return $"{said}; no limit is set";
        var kept = check.Range.Holds(value);
        var word = kept ? "kept" : check.Clause.Weight == Weight.Limit ? "not kept" : "advised, not kept";
        return $"{said}; {check.Limit}: {word}";
    }

    private static string Source(PickBench bench, ClauseCheck check) => $"{bench.Plan.Regulation.Title}, {check.Clause.Number}" + check.Clause.Evidence switch
    {
        Evidence.Memory => " (not checked against the document)",
        Evidence.Secondary => " (from another published text)",
        Evidence.Own => " (the shop's own)",
        _ => "",
    };

    private static string Bare(string title) => title.StartsWith("the ", StringComparison.Ordinal) ? title[4..] : title;
}
