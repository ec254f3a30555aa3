using System.Collections.Immutable;
using Rodwright.Drawings.Marks;

namespace Rodwright.Workshop.Pictures;

/// <summary>A small picture for a page. All its marks lie within it.</summary>
/// <param name="Width">mm of paper.</param>
/// <param name="Height">mm of paper.</param>
/// <param name="Marks">In drawing order; mm of paper, y up, origin bottom left.</param>
public sealed record Picture(double Width, double Height, ImmutableArray<Mark> Marks);
