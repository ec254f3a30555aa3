using Rodwright.Drawings.Marks;

namespace Rodwright.Drawings.Sheets;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Width">Its width, mm of paper.</param>
/// <param name="Align">How its cells stand; figures stand at their end.</param>
public sealed record TableColumn(string Title, double Width, HorizontalAnchor Align = HorizontalAnchor.Start);
