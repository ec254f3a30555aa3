using Rodwright.Drawings.Marks;

namespace Rodwright.Drawings.Sheets;

/// <summary>A label that found its place.</summary>
/// <param name="Text">The lettering.</param>
/// <param name="Lead">A thin line to the point spoken of, when the text had to stand off; else null.</param>
public sealed record PlacedLabel(TextMark Text, StrokeMark? Lead)
{
    /// <summary>Both marks, or the one there is.</summary>
    public IEnumerable<Mark> Marks => Lead is null ? [Text] : [Lead, Text];
}
