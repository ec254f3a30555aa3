namespace Rodwright.Workshop.Picks;

/// <summary>One number (or word) of a thing, explained.</summary>
/// <param name="Label">What it is, in bench words.</param>
/// <param name="Value">The value with its unit: "806.15 mm".</param>
/// <param name="Formula">
/// Its formula with the values in it, and what it comes to: "4 × 201.538 = 806.15". Every figure is printed with so many digits that the arithmetic comes out to
/// the last digit shown. Empty when the value is simply given, or read off the rod.
/// </param>
/// <param name="Source">Where the rule comes from, in trade words: a setting-out rule, a regulation's title and clause, or a practice.</param>
/// <param name="Path">The job's field that changes it; empty for none.</param>
public sealed record Fact(string Label, string Value, string Formula, string Source, string Path = "");
