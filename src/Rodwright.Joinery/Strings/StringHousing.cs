using Rodwright.Geometry;

namespace Rodwright.Joinery.Strings;

/// <summary>A housing on the face of a string, in the string's development (s, z).</summary>
/// <param name="Piece">Id of the part whose end it takes.</param>
/// <param name="Step">Step or riser number.</param>
/// <param name="IsRiser">Riser, or tread and nosing piece.</param>
/// <param name="Seat">What the piece fills.</param>
/// <param name="Shape">What is cut, wedge space included.</param>
/// <param name="Depth">mm.</param>
/// <param name="Nosing">Where the nosing's edge meets the face, (s, z) at the tread's surface; null when it does not on this face.</param>
public sealed record StringHousing(string Piece, int Step, bool IsRiser, Path2 Seat, Path2 Shape, double Depth, Point2? Nosing);
