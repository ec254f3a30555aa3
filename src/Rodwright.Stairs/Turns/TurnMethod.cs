using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>A named way of laying the riser lines of a turn. Instances are listed in <see cref="TurnCatalogue"/>.</summary>
public abstract class TurnMethod
{
    /// <summary>Stable id, as in the job file.</summary>
    public abstract string Id { get; }

    /// <summary>What it does, in bench words.</summary>
    public abstract string Title { get; }

    /// <summary>Whether straight steps beside the turn can share its taper.</summary>
    public virtual bool Shares => false;

    /// <summary>The riser lines of the steps that taper, first to last: one more than there are steps.</summary>
    public abstract IReadOnlyList<TurnLine> Lines(TurnSite site, TurnSetting setting);

    /// <summary>The first line, square to the incoming flight at y = -e.</summary>
    private protected static TurnLine First(TurnSite site, double e) =>
        new(new(e > site.HalfNewel ? site.InnerFace : site.HalfNewel, -e), new(site.Walking, -e), new(site.OuterFace, -e));

    /// <summary>The last line, square to the outgoing flight: the first line's mirror in the turn's axis.</summary>
    private protected static TurnLine Last(TurnSite site, double e)
    {
        var line = First(site, e);
        return site.Quarters == 1
            ? new(Swap(line.Inner), Swap(line.Walking), Swap(line.Outer))
            : new(line.Inner.Mirrored - Beyond(site), line.Walking.Mirrored - Beyond(site), line.Outer.Mirrored - Beyond(site));
    }

    private static Vector2 Beyond(TurnSite site) => new(site.Between, 0);

    private static Point2 Swap(Point2 p) => new(p.Y, p.X);
}
