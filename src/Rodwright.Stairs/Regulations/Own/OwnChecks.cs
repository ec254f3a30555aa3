using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations.Own;

/// <summary>Contradictions between the fields of a regulation file, each judged only where its fields were read well.</summary>
internal static class OwnChecks
{
    private static readonly string[] Goings = [GoingRule.Instance.Id, TaperedGoingRule.Instance.Id, OuterGoingRule.Instance.Id];

    public static void Apply(JobReading reading, OwnRegulation table)
    {
        var given = RegulationCatalogue.Find(table.BasedOn);
        if (given is null && reading.IsSound("basedOn")) Alone(reading, table);
        Line(reading, table, given);
        var seen = new HashSet<(string, string)>();
        for (var i = 0; i < table.Clauses.Length; i++)
        {
            var (clause, at) = (table.Clauses[i], $"clauses[{i}]");
            if (reading.IsSound(at + ".rule", at + ".clause") && clause.Rule.Length > 0 && !seen.Add((clause.Rule, clause.Clause)))
                reading.Contradict(OwnCodes.Twice, at + ".clause", $"\"{JsonWords.Shown(clause.Clause)}\" stands twice for the rule {clause.Rule}", "give each a number of its own, or take one out");
            if (reading.IsSound(at + ".rule") && clause.Measured is { } rule) Limit(reading, clause, rule, at);
            if (reading.IsSound(at + ".replaces", at + ".rule", "basedOn") && clause.Replaces.Length > 0) Replaces(reading, clause, given, at);
            if (reading.IsSound(at + ".evidence", at + ".weight") && (clause.Evidence, clause.Weight) == ("memory", "limit") && clause.Measured is not { MayBeUnlimited: true })
                reading.Contradict(OwnCodes.MemoryFails, at + ".weight", "a number from memory is to be a limit; a number that was not checked against the document fails no stair", "make the weight advice, or look the number up and mark it text-seen");
        }
    }

    /// <summary>What a table must say that is based on none.</summary>
    private static void Alone(JobReading reading, OwnRegulation table)
    {
        if (table.Clauses.IsEmpty && reading.IsSound("clauses"))
            reading.Contradict(OwnCodes.NoClauses, "clauses", "the table has no clauses, and is based on none that has", "add clauses, or name a published table in basedOn");
        if (!reading.IsSound("measures")) return;
        Missing("middleBelow", table.Measures.MiddleBelow is null);
        Missing("inset", table.Measures.Inset is null);
        Missing("going", table.Measures.Going.Length == 0);
        Missing("narrow", table.Measures.Narrow.Length == 0);
        Missing("taperedAtLeastStraight", table.Measures.TaperedAtLeastStraight is null);

        void Missing(string name, bool missing)
        {
            if (missing && !reading.IsGiven("measures." + name)) reading.Contradict(JobCodes.Missing, "measures." + name, $"measures.{name} is missing, and there is no table to take it from", "give it, or name a published table in basedOn");
        }
    }

    private static void Line(JobReading reading, OwnRegulation table, Regulation? given)
    {
        if (!reading.IsSound("measures", "basedOn")) return;
        if ((table.Measures.MiddleBelow ?? given?.WalkingLine.MiddleBelow, table.Measures.Inset ?? given?.WalkingLine.Inset) is not ({ } middle, { } inset)) return;
        // From a width of twice its distance on the line lies within the stair.
        if (inset == 0 || (middle > 0 && middle < inset))
            reading.Contradict(OwnCodes.Line, "measures.inset", $"a measuring line {Number.Print(inset)} from the inner side was read, for widths from {Number.Print(middle)} on; it would run along a side of the stair or outside it", "give a distance above 0 and below the width it begins at");
    }

    private static void Limit(JobReading reading, OwnClause clause, Rule rule, string at)
    {
        if (!reading.IsSound(at + ".least", at + ".most", at + ".atLeast", at + ".straightGoings", at + ".pairs")) return;
        var numbers = clause.Least is not null || clause.Most is not null;
        var ways = new[] { numbers, clause.AtLeast.Length > 0, clause.StraightGoings is not null, !clause.Pairs.IsEmpty }.Count(w => w);
        if (ways == 0 && !rule.MayBeUnlimited)
            reading.Contradict(OwnCodes.NoLimit, at, $"the clause for {rule.Title} says no limit", "give least, most or both; or atLeast, straightGoings or pairs");
        if (ways > 1)
            reading.Contradict(OwnCodes.TwoLimits, at, $"the limit of {rule.Title} is said in {Number.Print(ways)} ways; one is taken", "keep the numbers, or atLeast, or straightGoings, or pairs; two clauses may stand side by side");
        if (clause is { Least: { } least, Most: { } most } && least > most)
            reading.Contradict(OwnCodes.LeastAboveMost, at + ".least", $"least {Number.Exact(least)} was read and most {Number.Exact(most)}; nothing lies between", "exchange them, or take one out");
        if (!clause.Pairs.IsEmpty && !Goings.Contains(rule.Id))
            reading.Contradict(OwnCodes.PairsElsewhere, at + ".pairs", $"pairs of rise and going were read for {rule.Title}; they hold for goings", $"put them in a clause for {JsonWords.Either(Goings)}");
        if ((clause.AtLeast.Length > 0 || clause.StraightGoings is not null) && rule.Unit != RuleUnit.Millimetres)
            reading.Contradict(OwnCodes.NoLength, at + (clause.AtLeast.Length > 0 ? ".atLeast" : ".straightGoings"), $"{rule.Title} is no length; it cannot be measured against one", "give least or most as a number");
        foreach (var (name, value) in new[] { ("least", clause.Least), ("most", clause.Most) })
        {
            if (value is not { } number) continue;
            if (rule.Unit == RuleUnit.Count && number != Math.Floor(number))
                reading.Contradict(OwnCodes.NotWhole, $"{at}.{name}", $"{Number.Exact(number)} was read; {rule.Title} is a whole number", $"write {Number.Print(Math.Round(number), 0)}");
            if (rule.Unit == RuleUnit.Degrees && number > 90)
                reading.Contradict(OwnCodes.Angle, $"{at}.{name}", $"{Number.Exact(number)}° was read; {rule.Title} lies between 0° and 90°", "give the angle from level, in degrees");
        }
        for (var i = 0; i < clause.Pairs.Length; i++)
        {
            var (pair, path) = (clause.Pairs[i], $"{at}.pairs[{i}]");
            if (pair.RiseLeast > pair.RiseMost || pair.GoingLeast > pair.GoingMost)
                reading.Contradict(OwnCodes.Pair, path, "a pair was read whose least lies above its most", "exchange them");
        }
    }

    private static void Replaces(JobReading reading, OwnClause clause, Regulation? given, string at)
    {
        if (given is null)
        {
            reading.Contradict(OwnCodes.ReplacesNothing, at + ".replaces", "a clause to be replaced was read, but the table is based on none", "name a published table in basedOn, or take replaces out");
            return;
        }
        var there = given.Clauses.Where(c => c.Rule.Id == clause.Rule).Select(c => c.Number).Distinct().ToList();
        if (there.Contains(clause.Replaces)) return;
        reading.Contradict(OwnCodes.Replaces, at + ".replaces", $"{given.Id} has no clause \"{JsonWords.Shown(clause.Replaces)}\" for the rule {JsonWords.Shown(clause.Rule)}",
            there.Count == 0 ? "it has none for that rule: take replaces out" : $"its clauses for that rule: {string.Join("; ", there)}");
    }
}
