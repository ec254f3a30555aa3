using Rodwright.Geometry;
using Rodwright.Joinery.Steps;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Newels;

/// <summary>Foot and head of a newel above the lower floor (setting-out.md 5).</summary>
internal static class NewelHeights
{
    public static double Foot(StairPlan plan, NewelSite newel, SectionsOfPlan sections, IEnumerable<StringTenon> tenons)
    {
        var practice = plan.Job.Practice;
        if (newel.Role == NewelRole.Bottom || (newel.Role is NewelRole.Turn or NewelRole.Corner && !practice.PendantNewel)) return -practice.NewelBelowFloor;
        // Hangs below its lowest joint: a string's lower edge or a riser's housing.
        var lowest = tenons.Where(t => t.Newel == newel.Id).Select(t => t.LowerEdge)
            .Concat(sections.Risers.Values.Where(r => r.Inner.Concat(r.Outer).Any(s => s.Edge.Carrier == newel.Id)).Select(r => RiserMaker.Heights(plan, r.Step).Bottom))
            .DefaultIfEmpty(plan.Job.Survey.Height).Min();
        // A stair so low that it would hang into the floor lets it stand there.
        var hanging = lowest - practice.TopNewelDrop;
        return hanging > 0 ? hanging : -practice.NewelBelowFloor;
    }

    /// <summary>
    /// The highest rail line at the newel's centre, and the stand above it. A rail line lies the rail's height plumb above a pitch line (the line of the
    /// nosings) or above a floor.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="newel">The newel.</param>
    /// <param name="balustrade">The balustrade, where it is set out: then the highest rail is one that is made.</param>
    public static double Head(StairPlan plan, NewelSite newel, BalustradePlan? balustrade)
    {
        var practice = plan.Job.Practice;
        var made = (balustrade?.Rails ?? []).Where(r => r.Lower == newel.Id || r.Upper == newel.Id).Select(r => r.TopAt(r.Centre.Station(newel.Centre)) - practice.RailHeight).ToList();
        var highest = made.Count > 0 ? made.Max() : plan.Strings.Where(s => !s.IsWall || newel.Role is NewelRole.Turn or NewelRole.Corner)
            .Where(s => s.Lower.Newel == newel.Id || s.Upper.Newel == newel.Id)
            .Select(s => PitchLineAt(plan, s, s.Face.Station(newel.Centre)))
            .DefaultIfEmpty(0).Max();
        if (newel.Role == NewelRole.Top) highest = Math.Max(highest, plan.Risers * plan.Rise);
        if ((plan.TurnAt(newel.Id) ?? plan.TurnAround(newel.Id)) is { } turn) highest = Math.Max(highest, LevelAt(plan, turn));
        return highest + practice.RailHeight + practice.NewelAboveRail;
    }

    /// <summary>Height of the line of the nosings of a string's flight, produced to a station: from its square steps, or, where all of them taper, from the two next to it.</summary>
    private static double PitchLineAt(StairPlan plan, StringSite site, double s)
    {
        var flight = plan.Flights.FirstOrDefault(f => f.LastRiser >= site.FirstRiser && f.FirstRiser <= site.LastRiser && f.Along.Dot(site.Face.Along) > 1 - 1e-9);
        var risers = plan.RiserLines.Where(r => r.Number >= site.FirstRiser && r.Number <= site.LastRiser);
        var square = flight is null ? null : risers.FirstOrDefault(r => r.Number >= flight.FirstRiser && r.Number <= flight.LastRiser && r.Up.Dot(site.Face.Along) > 1 - 1e-9);
        return square is null ? 0 : square.Number * plan.Rise + (s - site.Face.Station(square.Inner) + plan.Job.Practice.Nosing) * plan.Rise / plan.Going;
    }

    /// <summary>A floor the turn's newel stands at: a landing, or the upper floor where the turn comes last.</summary>
    private static double LevelAt(StairPlan plan, TurnPlan turn)
    {
        if (turn.LastLine == plan.Risers) return plan.Risers * plan.Rise;
        return turn.Steps.IsEmpty ? turn.FirstLine * plan.Rise : 0;
    }
}
