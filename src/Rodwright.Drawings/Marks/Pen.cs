namespace Rodwright.Drawings.Marks;

/// <summary>How a line is drawn.</summary>
/// <param name="Width">Line width on paper, mm.</param>
/// <param name="Dash">The pattern, which scales with the width.</param>
/// <param name="Ink">How dark: 0 is bare paper, 1 is black.</param>
public sealed record Pen(double Width, Dash Dash, double Ink = 1);
