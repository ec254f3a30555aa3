using Rodwright.Geometry;

namespace Rodwright.Rod.Board;

/// <summary>How deep a board of some width is filled from its top, step by step along it; y runs down. Not for use from several threads.</summary>
internal sealed class Skyline(double width)
{
    private const double Same = 0.1; // mm

    private readonly List<(double X, double Width, double Y)> steps = [(0, width, 0)];

    /// <summary>Places blocks one after another, each as high as it goes, then as far to the left; fills in their upper left corners.</summary>
    /// <returns>How wide and how deep all of them come.</returns>
    public (double Width, double Height) Place(IReadOnlyList<Block> blocks, Point2[] tops)
    {
        var (across, deep) = (0.0, 0.0);
        for (var i = 0; i < blocks.Count; i++)
        {
            var size = blocks[i].Size;
            var at = Highest(size.Width);
            tops[i] = at;
            Fill(at.X, size.Width, at.Y + size.Height);
            (across, deep) = (Math.Max(across, at.X + size.Width), Math.Max(deep, at.Y + size.Height));
        }
        return (across, deep);
    }

    private Point2 Highest(double wide)
    {
        var best = new Point2(0, double.PositiveInfinity);
        for (var i = 0; i < steps.Count && steps[i].X + wide <= width + Same; i++)
        {
            var y = 0.0;
            for (var k = i; k < steps.Count && steps[k].X < steps[i].X + wide - Same; k++) y = Math.Max(y, steps[k].Y);
            if (y < best.Y) best = new(steps[i].X, y);
        }
        return best;
    }

    private void Fill(double x, double wide, double y)
    {
        var at = steps.FindIndex(s => s.X >= x - Same);
        var end = x + wide;
        while (at < steps.Count && steps[at].X < end - Same)
        {
            var (from, w, deep) = steps[at];
            if (from + w <= end + Same) steps.RemoveAt(at);
            else
            {
                steps[at] = (end, from + w - end, deep);
                break;
            }
        }
        steps.Insert(at, (x, wide, y));
    }
}
