using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// Equal goings and equal narrow ends: line j passes through the j-th point stepped along the walking line and the point j/n along the narrow line
/// (setting-out.md 2.2, method 1). Stepped with dividers (equal chords), as on the bench, or by equal arcs.
/// </summary>
public sealed class EqualGoings : TurnMethod
{
    private readonly bool byArc;

    private EqualGoings(bool byArc) => this.byArc = byArc;

    /// <summary>Stepped with dividers.</summary>
    public static EqualGoings ByChord { get; } = new(false);

    /// <summary>Divided along the arc.</summary>
    public static EqualGoings ByArc { get; } = new(true);

    /// <inheritdoc/>
    public override string Id => byArc ? "equal-arcs" : "equal-goings";

    /// <inheritdoc/>
    public override string Title => byArc
        ? "equal goings measured along the walking line, equal narrow ends"
        : "equal goings stepped along the walking line with dividers, equal narrow ends";

    /// <inheritdoc/>
    public override IReadOnlyList<TurnLine> Lines(TurnSite site, TurnSetting setting)
    {
        var (firstRiser, lastRiser, steps) = (setting.FirstRiser, setting.LastRiser, setting.Steps);
        var path = WalkingPath.Of(site, firstRiser, lastRiser);
        var narrow = site.NarrowLength(firstRiser, lastRiser) / steps;
        var chord = byArc ? 0 : path.EqualChord(steps);
        var lines = new TurnLine[steps + 1];
        lines[0] = First(site, firstRiser);
        lines[steps] = Last(site, lastRiser);
        var station = 0.0;
        for (var j = 1; j < steps; j++)
        {
            station = byArc ? path.Length * j / steps : path.Step(station, chord);
            var inner = site.OnNarrowLine(firstRiser, j * narrow);
            var walking = path.At(station);
            lines[j] = new(inner, walking, site.OnWalls(Line2.Between(inner, walking)));
        }
        return lines;
    }
}
