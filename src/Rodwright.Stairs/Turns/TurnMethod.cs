using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>A named way of laying the riser lines of a quarter turn. Instances are listed in <see cref="TurnCatalogue"/>.</summary>
public abstract class TurnMethod
{
    /// <summary>Stable id, as in the job file.</summary>
    public abstract string Id { get; }

    /// <summary>What it does, in bench words.</summary>
    public abstract string Title { get; }

    /// <summary>The n + 1 riser lines of <paramref name="steps"/> steps, first to last, for the given offsets.</summary>
    public abstract IReadOnlyList<TurnLine> Lines(TurnSite site, double firstRiser, double lastRiser, int steps);

    /// <summary>The first line, square to the incoming flight at y = -e_in.</summary>
    private protected static TurnLine First(TurnSite site, double e) =>
        new(new(e > site.HalfNewel ? site.InnerFace : site.HalfNewel, -e), new(site.Walking, -e), new(site.OuterFace, -e));

    /// <summary>The last line, square to the outgoing flight at x = -e_out: the first line's mirror in the diagonal.</summary>
    private protected static TurnLine Last(TurnSite site, double e)
    {
        var line = First(site, e);
        return new(Swap(line.Inner), Swap(line.Walking), Swap(line.Outer));
    }

    private static Point2 Swap(Point2 p) => new(p.Y, p.X);
}
