using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Rod.Views;

/// <summary>Keeps two rows of figures that meet at a corner of a drawing apart: on a small drawing crowded figures spread beyond its ends.</summary>
internal static class FigureRows
{
    /// <summary>The second row as it stands, or, where its figures would run into the first's, moved away from the drawing until they do not.</summary>
    /// <param name="first">The row that stays.</param>
    /// <param name="second">Draws the other row, moved out by so many mm of paper.</param>
    public static IReadOnlyList<Mark> Apart(IReadOnlyList<Mark> first, Func<double, IReadOnlyList<Mark>> second)
    {
        var taken = Figures(first);
        for (var out1 = 0.0; ; out1 += 4)
        {
            var row = second(out1);
            if (out1 > 120 || !Figures(row).Exists(b => taken.Exists(t => t.Overlaps(b)))) return row;
        }
    }

    private static List<Box2> Figures(IReadOnlyList<Mark> marks) => [.. marks.OfType<TextMark>().Select(t => t.Bounds.Grown(0.4))];
}
