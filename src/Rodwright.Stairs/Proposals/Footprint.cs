namespace Rodwright.Stairs.Proposals;

/// <summary>The box round several rectangles of a plan, its sides along the first flight.</summary>
internal struct Footprint
{
    public Footprint() => (Left, Right, Bottom, Top) = (double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);

    public double Left { get; private set; }

    public double Right { get; private set; }

    public double Bottom { get; private set; }

    public double Top { get; private set; }

    public readonly bool Any => Right > Left;

    /// <summary>Takes in a rectangle of a flight: across from <paramref name="x0"/> to <paramref name="x1"/>, along from <paramref name="y0"/> to <paramref name="y1"/>.</summary>
    public void Add(double ox, double oy, double dx, double dy, double x0, double x1, double y0, double y1)
    {
        // Across is to the right of along.
        Point(ox + x0 * dy + y0 * dx, oy - x0 * dx + y0 * dy);
        Point(ox + x1 * dy + y1 * dx, oy - x1 * dx + y1 * dy);
    }

    private void Point(double x, double y) => (Left, Right, Bottom, Top) = (Math.Min(Left, x), Math.Max(Right, x), Math.Min(Bottom, y), Math.Max(Top, y));
}
