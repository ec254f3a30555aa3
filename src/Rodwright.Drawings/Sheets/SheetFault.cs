using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>Something on a sheet that would not read.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Message">In words, with the lettering concerned.</param>
/// <param name="Where">The place on the sheet, mm.</param>
public sealed record SheetFault(SheetFaultKind Kind, string Message, Box2 Where);
