using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures;

/// <summary>Puts the clauses of two reports on one job side by side: clauses that measure the same thing, the first with the first, the second with the second.</summary>
internal static class ChangesOfClauses
{
    private const double Same = 0.005; // half of the last figure printed

    public static IEnumerable<ClauseChange> Between(RegulationReport was, RegulationReport now)
    {
        var left = was.Checks.GroupBy(c => c.Clause.Rule.Id).ToDictionary(g => g.Key, g => new Queue<ClauseCheck>(g));
        foreach (var check in now.Checks)
        {
            var old = left.TryGetValue(check.Clause.Rule.Id, out var queue) && queue.Count > 0 ? queue.Dequeue() : null;
            yield return new(Title(check), Changed(old, check), Words(old, check));
        }
        foreach (var old in was.Checks.Where(c => left[c.Clause.Rule.Id].Contains(c)))
        {
            var judged = Judged(old);
            yield return new(Title(old), judged, "asked for no longer" + (judged ? $"; was {Outcome(old)}: {Measured(old)}" : ""));
        }
    }

    private static string Title(ClauseCheck check) => $"{check.Clause.Rule.Title} ({check.Clause.Number})";

    private static bool Judged(ClauseCheck check) => check.Outcome != CheckOutcome.NotChecked;

    private static bool Changed(ClauseCheck? old, ClauseCheck now)
    {
        if (old is null) return Judged(now);
        if (!Judged(old) && !Judged(now)) return Differ(old.Measured, now.Measured);
        return old.Outcome != now.Outcome || Differ(old.Measured, now.Measured) || Differ(old.Range.Least, now.Range.Least) || Differ(old.Range.Most, now.Range.Most);
    }

    private static bool Differ(double? a, double? b) => a is { } x && b is { } y ? Math.Abs(x - y) > Same : a is null != b is null;

    private static string Words(ClauseCheck? old, ClauseCheck now)
    {
        var words = Judged(now) ? $"{Outcome(now)}: {Measured(now)}" : now.Measured is null ? $"not judged: {now.Reason}" : $"{now.MeasuredWords}, {now.Reason}";
        if (old is null) return words + "; not asked for before";
        var before = new List<string>();
        if (Judged(old) && Judged(now) && old.Outcome != now.Outcome) before.Add(Outcome(old));
        if (old.Measured is not null && Differ(old.Measured, now.Measured)) before.Add(old.MeasuredWords);
        if (Judged(old) && Judged(now) && (Differ(old.Range.Least, now.Range.Least) || Differ(old.Range.Most, now.Range.Most))) before.Add($"{old.Limit} {Allowed(old)}");
        if (Judged(old) && !Judged(now)) before = [$"{Outcome(old)}: {Measured(old)}"];
        if (!Judged(old) && Judged(now)) before.Add(old.Measured is null ? "not judged" : "without a limit");
        return before.Count == 0 ? words : $"{words}; was {string.Join(", ", before)}";
    }

    private static string Measured(ClauseCheck check) => $"{check.MeasuredWords} where {check.Limit} {Allowed(check)}";

    private static string Allowed(ClauseCheck check) => check.Clause.Weight == Weight.Advice ? "is advised" : "is allowed";

    private static string Outcome(ClauseCheck check) => check.Outcome switch
    {
        CheckOutcome.Pass => "kept",
        CheckOutcome.Fail => "not kept",
        CheckOutcome.Advice => "advice not kept",
        _ => "not judged",
    };
}
