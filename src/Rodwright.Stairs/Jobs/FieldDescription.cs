using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs;

/// <summary>What there is to know about one field of a job file: for the guide, the forms and the schema alike.</summary>
/// <param name="Path">Where it stands, for example practice.treadWedge.length; [] for an item of a list.</param>
/// <param name="Label">Its name in the trade's words.</param>
/// <param name="Unit">mm, or empty.</param>
/// <param name="Least">Least value allowed; null for fields without a range.</param>
/// <param name="Most">Greatest value allowed; null for fields without a range.</param>
/// <param name="Default">What is taken when it is left out, as written in the file; null when it must be given or nothing is taken.</param>
/// <param name="Choices">The words allowed; empty when it is not a choice.</param>
/// <param name="Required">Whether a job without it is refused.</param>
/// <param name="Source">What it means and where its default comes from.</param>
public sealed record FieldDescription(
    string Path, string Label, string Unit, double? Least, double? Most, string? Default,
    ImmutableArray<string> Choices, bool Required, string Source)
{
    /// <summary>Whether it is a length, typed and told in the unit of the job.</summary>
    public bool IsLength => Unit == "mm";

    /// <summary>What is allowed, in the unit of a job; empty for fields without a range.</summary>
    public string RangeIn(Units units) => this is { Least: { } least, Most: { } most } ? IsLength ? $"{units.Print(least)} to {units.Print(most)}" : $"{Number.Print(least)} to {Number.Print(most)}" : "";

    /// <summary>What is taken when it is left out, as it would be typed in a job of the unit; null where nothing is.</summary>
    public string? DefaultIn(Units units) =>
        IsLength && Default is { } usual && Units.Millimetres.TryRead(usual, out var length) ? units.Typed(length) : Default;

    /// <summary>The word for its unit in a job of a unit: mm, "ft, in", or what the field counts in.</summary>
    public string UnitIn(Units units) => IsLength && units.IsInches ? "ft, in" : Unit;

    /// <summary>What it means and where its default comes from, lengths told in the unit of a job.</summary>
    public string SourceIn(Units units) => units.IsInches && Fields.InchWords.Of(Path) is { } inches ? inches : Source;

    /// <summary>Label of the group of fields it stands in: "tread wedge"; empty at the top of the file.</summary>
    public string Group { get; init; } = "";
}
