using System.Collections.Immutable;
using System.Text;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Stages;

/// <summary>How a line is found and drawn: from which datum, how far, which way, and why.</summary>
/// <param name="Measures">The distances to mark off, in order; at least one.</param>
/// <param name="Act">What is done with the marks, beginning with a verb.</param>
/// <param name="Why">The rule, and its formula with the values in it.</param>
/// <param name="Source">Where the rule is published, by a short name of <see cref="Published.Books"/> or a regulation's title; empty where none is known.</param>
/// <param name="Proves">True when the line is drawn first and the distances prove it.</param>
public sealed record Instruction(ImmutableArray<Measure> Measures, string Act, string Why, string Source = "", bool Proves = false)
{
    /// <summary>What to do, in sentences.</summary>
    public string What(Units units) => Proves ? $"{Sentence.Begin(Act)}. To prove it, {Marked(units)}." : $"{Sentence.Begin(Marked(units))}. {Sentence.Begin(Act)}.";

    /// <summary>Why, with its source in brackets.</summary>
    public string Reason => Source.Length == 0 ? $"{Sentence.Begin(Why)}." : $"{Sentence.Begin(Why)} ({Source}).";

    /// <summary>The measures in words; those from one datum and one way are told together, each with its label.</summary>
    private string Marked(Units units)
    {
        var words = new StringBuilder();
        for (var i = 0; i < Measures.Length;)
        {
            var first = Measures[i];
            var like = Measures.Skip(i).TakeWhile(m => m.Datum == first.Datum && m.Way == first.Way).ToList();
            var labelled = Measures.Count(m => m.Datum == first.Datum) > 1;
            if (i > 0) words.Append("; ");
            words.Append(i == 0 || Measures[i - 1].Datum != first.Datum ? $"from {first.Datum} measure " : "and ");
            words.AppendJoin(" and ", like.Select(m => labelled ? $"{units.Print(m.Distance)} ({m.Label})" : units.Print(m.Distance)));
            words.Append(' ').Append(first.Way);
            i += like.Count;
        }
        return words.ToString();
    }
}
