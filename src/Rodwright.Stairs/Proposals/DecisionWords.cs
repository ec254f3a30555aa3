using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Proposals;

/// <summary>Decisions in bench words.</summary>
internal static class DecisionWords
{
    /// <summary>"the pitch: 43.1° with 13 risers of 203 and a going of 217; 42° is allowed".</summary>
    public static string Decided(RuleBounds rules, Bound bound, double over, Candidate c, Brief brief)
    {
        var (rise, stair) = (brief.Survey.Height / c.Risers, Stair(c, brief));
        return bound switch
        {
            Bound.Rise => $"the rise: {Mm(brief.Units, over)} outside {Range(brief.Units, rules.Rise)} with {stair}",
            Bound.Going => $"the going: {Mm(brief.Units, over)} outside {Range(brief.Units, rules.Going)} with {stair}",
            Bound.Pitch => $"the pitch: {Degrees(rise / c.Going)} with {stair}; {Degrees(rules.Slope)} is allowed",
            Bound.TaperedPitch => $"the pitch of the tapered steps with {stair}; {Degrees(rules.TaperedSlope)} is allowed",
            Bound.TwoRiseAndGoing => $"twice the rise and the going: {Mm(brief.Units, over)} outside {Range(brief.Units, rules.TwoRiseAndGoing)} with {stair}",
            Bound.RisersPerFlight => $"the number of risers in a flight: {Number.Print(over, 0)} off with {stair}",
            Bound.FlightRise => $"the height of a flight: {Mm(brief.Units, over)} too much with {stair}",
            Bound.StraightRun => $"the number of risers without a change of direction: {Number.Print(over, 0)} too many",
            Bound.ClearWidth => $"the clear width: {Mm(brief.Units, over)} short of {Mm(brief.Units, rules.ClearWidth)}",
            Bound.Landing => $"the length of the landing: {Mm(brief.Units, over)} short",
            Bound.Narrow => $"the narrow ends: {Mm(brief.Units, over)} short at a newel of {brief.Units.Print(c.Newel)} with {Tapered(c)} and {stair}",
            Bound.TaperedGoing => $"the going of the tapered steps on the walking line: {Mm(brief.Units, over)} short at a newel of {brief.Units.Print(c.Newel)} with {Tapered(c)} and {stair}",
            Bound.LongestGoing => $"the longest going of the tapered steps: {Mm(brief.Units, over)} more than {Mm(brief.Units, rules.GreatestGoing)} with {Tapered(c)} and {stair}",
            Bound.StringWidth => $"the width of the strings: {Mm(brief.Units, over)} more is needed under {stair}",
            Bound.Proud => $"the newels: one of {brief.Units.Print(c.Newel)} stands {Mm(brief.Units, over)} less proud of its strings than its housings are deep",
            Bound.Shoulders => $"the length of string between two newels: {Mm(brief.Units, over)} short with {stair}",
            Bound.RoomLength => $"the length of the room: {Mm(brief.Units, over)} short along the wall with {stair}",
            Bound.RoomWidth => $"the width of the room: {Mm(brief.Units, over)} short out from the wall with {stair}",
            Bound.WellLength => $"the headroom under the edge of the well: it would be {Mm(brief.Units, over)} too short for {Mm(brief.Units, rules.Headroom)} with {stair}",
            Bound.WellWidth => $"the headroom beside the well: it is {Mm(brief.Units, over)} too narrow for {Mm(brief.Units, rules.Headroom)} with {stair}",
            _ => "",
        };
    }

    /// <summary>"13 risers of 203 and a going of 217".</summary>
    public static string Stair(Candidate c, Brief brief) => $"{Number.Print(c.Risers, 0)} risers of {brief.Units.Print(brief.Survey.Height / c.Risers)} and a going of {brief.Units.Print(c.Going, 0)}";

    /// <summary>The same with newel and steps: "..., newel 90, flights 6 4, turns 3".</summary>
    public static string Whole(Candidate c, Brief brief) =>
        $"{Stair(c, brief)}, newel {brief.Units.Print(c.Newel)}, width {brief.Units.Print(c.Width)}, flights {Join(c.Goings)}{(c.Steps.IsEmpty ? "" : $", turns {Join(c.Steps)}")}";

    private static string Join(IEnumerable<int> numbers) => string.Join(' ', numbers.Select(n => Number.Print(n, 0)));

    public static string Degrees(double slope) => Number.Print(Angle.OfPitch(slope, 1).Degrees) + "°";

    public static string Mm(Units units, double value) => units.With(value, 1);

    private static string Tapered(Candidate c) => c.Steps.Distinct().Count() == 1 ? $"{Number.Print(c.Steps[0], 0)} tapered steps" : $"{Number.Print(c.Steps.Max(), 0)} tapered steps";

    private static string Range(Units units, (double Least, double Most) range) => (double.IsFinite(range.Least), double.IsFinite(range.Most)) switch
    {
        (true, true) => $"{units.Range(range.Least, range.Most, 1)}",
        (true, false) => $"at least {Mm(units, range.Least)}",
        _ => $"at most {Mm(units, range.Most)}",
    };
}
