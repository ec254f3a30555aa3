using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Workshop.Tables;

/// <summary>Two or three tables beside one another: how they measure, and what they say to each rule.</summary>
/// <param name="Tables">The tables, in the order they are shown.</param>
/// <param name="Rows">Ways of measuring first, then every rule that any of them limits, in the order of the catalogue.</param>
public sealed record TableComparison(ImmutableArray<Regulation> Tables, ImmutableArray<ComparedRow> Rows)
{
    /// <summary>Compares tables.</summary>
    public static TableComparison Of(params IEnumerable<Regulation> tables)
    {
        ImmutableArray<Regulation> all = [.. tables];
        var rows = ImmutableArray.CreateBuilder<ComparedRow>();
        rows.Add(Measure("where goings of tapered steps are measured", (t, u) => Line(t.WalkingLine, u)));
        rows.Add(Measure("going of a tapered step", (t, _) => t.Going == GoingMeasure.Chord ? "chord, straight across" : "arc, along the walking line"));
        rows.Add(Measure("narrow end", (t, _) => t.Narrow switch { NarrowMeasure.AlongFaces => "going along the faces", NarrowMeasure.Straight => "straight across", _ => "tread width" }));
        rows.Add(Measure("tapered steps beside straight ones", (t, _) => t.TaperedAtLeastStraight ? "going no less than the straight going" : "going need not match"));
        foreach (var rule in RuleCatalogue.Measured.Concat(RuleCatalogue.Unmeasured))
        {
            ImmutableArray<ImmutableArray<Clause>> cells = [.. all.Select(t => t.Clauses.Where(c => c.Rule == rule).ToImmutableArray())];
            if (cells.All(c => c.IsEmpty)) continue;
            rows.Add(Row(rule.Title, [.. cells.Select((c, i) => new ComparedCell(c, string.Join("; ", c.Select(clause => Words(clause, all[i].Units))), string.Join("; ", c.Select(clause => Words(clause, Units.Millimetres)))))]));
        }
        return new(all, rows.ToImmutable());

        ComparedRow Measure(string title, Func<Regulation, Units, string> words) => Row(title, [.. all.Select(t => new ComparedCell([], words(t, t.Units), words(t, Units.Millimetres)))]);
    }

    /// <summary>What a clause says, whatever the stair: its limit with its weight, and "not checked" where it is not measured.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="document">The unit of its document (<see cref="Regulation.Units"/>).</param>
    public static string Words(Clause clause, Units document)
    {
        if (clause.Rule is UnmeasuredRule) return clause.Limit.IsNone ? "asked for" : clause.Limit.Statement(clause.Rule, document);
        if (clause.Limit.IsNone) return "for information";
        return clause.Limit.Statement(clause.Rule, document) + (clause.Weight == Weight.Advice ? ", advised" : "");
    }

    private static ComparedRow Row(string title, ImmutableArray<ComparedCell> cells)
    {
        var asked = cells.Count(c => c.Words.Length > 0);
        var difference = cells.Select(c => c.Compared).Distinct().Count() == 1 ? Difference.Same : asked < cells.Length ? Difference.NotInAll : Difference.Different;
        return new(title, cells, difference);
    }

    private static string Line(WalkingLineRule line, Units document)
    {
        var inset = $"{DocumentLength.Print(line.Inset, document)} from {(line.BothSides ? "each side" : "the inner side")}";
        return line.MiddleBelow == 0 ? inset : $"in the middle below {DocumentLength.Print(line.MiddleBelow, document)} clear, then {inset}";
    }
}

/// <summary>One line of a comparison.</summary>
/// <param name="Title">What is measured.</param>
/// <param name="Cells">One per table.</param>
/// <param name="Difference">How they differ.</param>
public sealed record ComparedRow(string Title, ImmutableArray<ComparedCell> Cells, Difference Difference)
{
    /// <summary>The difference in words.</summary>
    public string DifferenceWords => Difference switch { Difference.Same => "the same", Difference.Different => "different", _ => "not in all" };
}

/// <summary>What one table says to it.</summary>
/// <param name="Clauses">The clauses; empty for a way of measuring, and where it says nothing.</param>
/// <param name="Words">In words; empty where it says nothing.</param>
/// <param name="Compared">The same in millimetres, whatever the document is written in: by this tables differ.</param>
public sealed record ComparedCell(ImmutableArray<Clause> Clauses, string Words, string Compared);

/// <summary>How tables differ in one thing.</summary>
public enum Difference
{
    /// <summary>They say the same.</summary>
    Same,

    /// <summary>All say something, not the same.</summary>
    Different,

    /// <summary>Some say nothing.</summary>
    NotInAll,
}
