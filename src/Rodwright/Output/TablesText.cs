using Rodwright.Geometry;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Output;

/// <summary>Regulation tables as text.</summary>
internal static class TablesText
{
    public static void List(TextWriter to, RegulationShelf shelf)
    {
        var rows = new List<string[]> { new[] { "id", "clauses", "from memory", "title" } };
        rows.AddRange(shelf.All.Select(t => new[] { t.Id, Number.Print(t.Clauses.Length), Number.Print(t.Clauses.Count(c => c.Evidence == Evidence.Memory)), t.Title }));
        Columns.Write(to, rows, 1, 2);
    }

    public static void One(TextWriter to, Regulation table)
    {
        to.WriteLine(table.Title);
        to.WriteLine("  " + table.Standing);
        to.WriteLine("  " + table.Measures);
        to.WriteLine();
        var rows = new List<string[]> { new[] { "clause", "rule", "limit", "weight", "evidence", "source" } };
        rows.AddRange(table.Clauses.Select(c => new[]
        {
            c.Number, c.Rule.Id, c.Limit.Statement(c.Rule, table.Units), c.Rule is UnmeasuredRule ? "not checked" : c.Limit.IsNone ? "information" : c.Weight == Weight.Limit ? "limit" : "advice",
            EvidenceWords.Print(c.Evidence), c.Source,
        }));
        Columns.Write(to, rows);
        to.WriteLine();
        to.WriteLine("  The last word is the local authority's.");
    }

    public static void Rules(TextWriter to)
    {
        var rows = new List<string[]> { new[] { "rule", "unit", "what is measured" } };
        rows.AddRange(RuleCatalogue.Measured.Select(r => new[] { r.Id, r.Unit switch { RuleUnit.Millimetres => "mm", RuleUnit.Degrees => "degrees", _ => "number" }, r.Title }));
        rows.AddRange(RuleCatalogue.Unmeasured.Select(r => new[] { r.Id, "-", $"{r.Title}: not checked, {r.Nothing}" }));
        Columns.Write(to, rows);
    }
}
