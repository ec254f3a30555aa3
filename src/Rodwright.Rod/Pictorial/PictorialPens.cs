using Rodwright.Drawings.Marks;

namespace Rodwright.Rod.Pictorial;

/// <summary>Pens of pictures, from the same series as the others.</summary>
internal static class PictorialPens
{
    /// <summary>Where a piece turns out of sight: 0.35 mm.</summary>
    public static Pen Contour { get; } = Pens.Visible;

    /// <summary>Arrises between two faces that are both seen: 0.18 mm.</summary>
    public static Pen Arris { get; } = new(0.18, Dash.None);

    /// <summary>What was there before: 0.13 mm, grey.</summary>
    public static Pen Faint { get; } = Pens.Construction;
}
