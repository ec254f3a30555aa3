using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>A point that is dimensioned.</summary>
/// <param name="At">Where it is, mm of paper; its extension line starts there.</param>
/// <param name="Value">How far along it is, mm of timber, from whatever datum the row shares.</param>
/// <param name="Note">A word after the figure, as "riser 3"; only running ordinates print it.</param>
/// <param name="Of">Id of what is measured, for picking; in a chain, of the length that ends here.</param>
public readonly record struct DimensionStop(Point2 At, double Value, string Note = "", string? Of = null);
