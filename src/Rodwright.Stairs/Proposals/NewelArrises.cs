using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// Where the risers of a quarter turn may land once its first and last stand in the strings: on the newel with its cover, or so far past it that neither board nor nosing meets it. On an
/// arris a riser would be housed half in the newel and half in the string behind.
/// </summary>
internal sealed class NewelArrises(Practice practice)
{
    /// <summary>Whether every riser between the first and the last keeps clear of both arrises that the strings come to.</summary>
    public bool AreClear(TurnSite site, IReadOnlyList<TurnLine> lines)
    {
        for (var j = 1; j < lines.Count - 1; j++) if (!IsClear(site.HalfNewel, lines[j])) return false;
        return true;
    }

    private bool IsClear(double h, TurnLine line)
    {
        var (inner, along) = (line.Inner, (line.Outer - line.Inner).Unit);
        var up = along.Left;
        // Before the newel the riser's back must be clear of it, after it the nosing in front.
        if (inner.Y < -h && inner.X > -h) return (new Geometry.Point2(h, -h) - inner).Dot(up) >= practice.Riser + practice.Cover;
        if (inner.X < -h) return (inner - new Geometry.Point2(-h, h)).Dot(up) >= practice.Nosing;
        if (inner.Y < h - Geometry.Tolerance.Same) return inner.Y >= practice.Cover - h;
        // Slanted, it drifts towards the arris on its way into the newel.
        return inner.X >= practice.Cover - h + practice.NewelHousing * Math.Abs(along.X / along.Y);
    }
}
