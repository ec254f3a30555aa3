using Rodwright.Drawings.Marks;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>A layer of a DXF file: what a machine or another program sorts by.</summary>
/// <param name="Name">Letters, digits, space, hyphen, underscore and dollar; anything else is written as an underscore.</param>
/// <param name="Colour">AutoCAD colour index, 1 to 255; 7 is black or white.</param>
/// <param name="LineWidth">mm; the nearest width the format knows is written.</param>
/// <param name="Dash">Line pattern of the layer.</param>
public sealed record DxfLayer(string Name, int Colour, double LineWidth, Dash Dash);
