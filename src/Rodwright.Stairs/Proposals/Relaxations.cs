using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Surveys;
using static Rodwright.Stairs.Proposals.DecisionWords;

namespace Rodwright.Stairs.Proposals;

/// <summary>What would let a candidate in that fails in one thing alone. What changes the house or the newel is tried on the whole plan before it is said.</summary>
internal static class Relaxations
{
    /// <summary>More than this is another house.</summary>
    private const double MostMoved = 2000;

    /// <summary>The change; null when none of its kind holds.</summary>
    public static Relaxation? Of(Brief brief, Regulation table, Bound bound, double over, Candidate c, RuleBounds rules, Func<Job, string?> confirm)
    {
        var (rise, pace) = (brief.Survey.Height / c.Risers, Pace.OfGoings(brief.Units));
        return bound switch
        {
            Bound.WellLength => Moved(by => Well(brief, w => w with { Length = Longer(w.Length, by) }, by), "more well"),
            Bound.WellWidth => Moved(by => Well(brief, w => w with { Width = Longer(w.Width, by) }, by), "more width of well"),
            Bound.RoomLength => Moved(by => Wall(brief, brief.Survey.Place.Wall - 1, by), "more room along the wall"),
            Bound.RoomWidth => Moved(by => Wall(brief, brief.Survey.Place.Wall, by), "more room out from the wall"),
            Bound.Narrow or Bound.TaperedGoing or Bound.Proud => Newel(),
            Bound.ClearWidth or Bound.Landing => Wider(),
            Bound.StringWidth => new(bound, over, $"strings {Mm(brief.Units, over)} wider with {Stair(c, brief)}"),
            Bound.Pitch => new(bound, over, $"{Number(c.Risers)} risers and a going of {brief.Units.Print(c.Going)} give {Exact(rise / c.Going)}, where {Degrees(rules.Slope)} is allowed: another regulation, or one agreed with whoever checks the building"),
            Bound.Rise or Bound.Going or Bound.TwoRiseAndGoing => new(bound, over, $"{Stair(c, brief)} under a limit that is {Mm(brief.Units, over)} wider"),
            _ => null,
        };

        Relaxation? Moved(Func<double, Brief?> change, string what)
        {
            for (var steps = pace.Up(over, 1e-6); pace.At(steps) <= Math.Min(MostMoved, over + 40); steps++)
            {
                var by = pace.At(steps);
                if (change(by) is not { } changed || !Holds(changed, c)) continue;
                return Closes(changed, c) ? new(bound, by, $"{Mm(brief.Units, by)} {what}") : null;
            }
            return null;
        }

        Relaxation? Newel()
        {
            for (var newel = brief.Units.Up(c.Newel + 1, 5); newel <= 200; newel = brief.Units.Up(newel + 1, 5))
                if (Holds(brief, c with { Newel = newel, Offsets = [] }) && Closes(brief, c with { Newel = newel, Offsets = [] })) return new(bound, newel - c.Newel, $"a newel of {brief.Units.Print(newel)} with {Stair(c, brief)}");
            return null;
        }

        Relaxation? Wider()
        {
            for (var width = brief.Units.Up(c.Width + over); width <= c.Width + 400; width = brief.Units.Stock(width + brief.Units.Nearby(5)))
                if (Holds(brief, c with { Width = width, Offsets = [] }) && Closes(brief, c with { Width = width, Offsets = [] })) return new(bound, width - c.Width, $"a stair {brief.Units.Print(width)} wide");
            return null;
        }

        bool Closes(Brief changed, Candidate candidate) => confirm(candidate.Job(changed, brief.Wishes?.Hand ?? Hand.Left)) is null;

        bool Holds(Brief changed, Candidate candidate) => FullCheck.Of(candidate.Job(changed, brief.Wishes?.Hand ?? Hand.Left), table).Against is null;
    }

    private static string Exact(double slope) => Geometry.Number.Print(Geometry.Angle.OfPitch(slope, 1).Degrees, 2) + "°";

    /// <summary>
    /// The house changed in several ways at once, each by as little as does it: for a candidate that only fails in what the house allows. Null when 2 m more every way does not do.
    /// </summary>
    public static Relaxation? Together(Brief brief, Regulation table, ReadOnlySpan<double> over, Candidate c, Func<Job, string?> confirm)
    {
        (Bound Bound, string Words)[] ways =
        [
            (Bound.WellLength, "more well"), (Bound.WellWidth, "more width of well"), (Bound.RoomLength, "more room along the wall"), (Bound.RoomWidth, "more room out from the wall"),
        ];
        // Whole steps and level lines across a turn may ask for a little more than boxes tell, and of the well both ways.
        var (by, pace) = (new double[ways.Length], Pace.OfGoings(brief.Units));
        var first = 0;
        for (var i = 0; i < by.Length; i++)
        {
            by[i] = Math.Min(pace.At(pace.Down(MostMoved, 0)), pace.At(pace.Up(Math.Min(MostMoved, over[(int)ways[i].Bound]), 0) + pace.Up(400, 0)));
            if (over[(int)ways[i].Bound] > over[(int)ways[first].Bound]) first = i;
        }
        if (!Holds()) return null;
        for (var i = 0; i < by.Length; i++)
        {
            var (low, high) = (0, pace.Down(by[i], Tolerance.Same));
            while (low < high)
            {
                var middle = (low + high) / 2;
                by[i] = pace.At(middle);
                if (Holds()) high = middle;
                else low = middle + 1;
            }
            by[i] = pace.At(high);
        }
        if (confirm(c.Job(Changed(), brief.Wishes?.Hand ?? Hand.Left)) is not null) return null;
        var words = ways.Select((w, i) => (w.Words, By: by[i])).Where(w => w.By > 0).Select(w => $"{Mm(brief.Units, w.By)} {w.Words}").ToList();
        return new(ways[first].Bound, by[first], string.Join(", ", words) + (words.Count > 1 ? ", all together" : "") + $", for {Stair(c, brief)}");

        bool Holds() => FullCheck.Of(c.Job(Changed(), brief.Wishes?.Hand ?? Hand.Left), table).Against is null;

        Brief Changed()
        {
            var changed = brief;
            if (by[0] > 0) changed = Well(changed, w => w with { Length = Longer(w.Length, by[0]) }, by[0]) ?? changed;
            if (by[1] > 0) changed = Well(changed, w => w with { Width = Longer(w.Width, by[1]) }, 0) ?? changed;
            if (by[2] > 0) changed = Wall(changed, brief.Survey.Place.Wall - 1, by[2]) ?? changed;
            if (by[3] > 0) changed = Wall(changed, brief.Survey.Place.Wall, by[3]) ?? changed;
            return changed;
        }
    }

    private static string Number(double value) => Geometry.Number.Print(value);

    private static Readings Longer(Readings readings, double by) => new([.. readings.Values.Select(v => v + by)]);

    private static Brief? Well(Brief brief, Func<Well, Well> change, double by)
    {
        if (brief.Survey.Well is not { IsRectangle: true } well) return null;
        var changed = change(well);
        // A well that has a place grows back towards the foot.
        if (changed.Along is { } along && changed.Length != well.Length) changed = changed with { Along = along - by };
        return brief with { Survey = brief.Survey with { Well = changed } };
    }

    private static Brief? Wall(Brief brief, int wall, double by) => wall < 0 || wall >= brief.Survey.Walls.Count ? null
        : brief with { Survey = brief.Survey with { Walls = brief.Survey.Walls.With(wall, brief.Survey.Walls[wall] with { Length = Longer(brief.Survey.Walls[wall].Length, by) }) } };
}
