namespace Rodwright.Stairs.Rules;

/// <summary>The rules this version does not measure, each with the reason a report gives.</summary>
internal static class Unmeasureds
{
    public static Rule EndLandings { get; } = new UnmeasuredRule("end-landings", "landings at top and bottom", "the floors at top and bottom are not in the job: check them in the house");

    public static Rule Doors { get; } = new UnmeasuredRule("doors", "doors at landings", "doors are not in the job: check their swing in the house");

    public static Rule EscapeWidth { get; } = new UnmeasuredRule("escape-width", "width for escape and access", "widths for escape and access come from other documents: ask whoever checks the building");

    public static Rule Lighting { get; } = new UnmeasuredRule("lighting", "lighting", "lighting is not part of the joiner's work here");

    public static Rule NosingEdge { get; } = new UnmeasuredRule("nosing-edge", "radius or bevel of the nosing's edge", "the edge is worked by the shop's own cutter: check it by hand");

    public static Rule LevelTreads { get; } = new UnmeasuredRule("level-treads", "treads level", "treads are set out level; as built it is checked with a level");

    public static Rule External { get; } = new UnmeasuredRule("external", "external stairs of a dwelling", "the job is an internal stair");

    public static Rule CategoryGoing { get; } = new UnmeasuredRule("category-going", "longest going at the outer measuring point", "the table of private stairs states no longest going");

    public static Rule Fixings { get; } = new UnmeasuredRule("fixings", "fixing of strings and newels", "fixings are the fitter's: check centres, screws and glue by hand");

    public static Rule ControlSums { get; } = new UnmeasuredRule("control-sums", "rise and going together, and going less rise", "sums of practice to compare stairs by, not limits");

    public static Rule FlightWidth { get; } = new UnmeasuredRule("flight-width", "width of the flight", "the document sets a width that was not read here: ask whoever checks the building");

    public static Rule Winders { get; } = new UnmeasuredRule("winders-clause", "winders", "the clauses on winders were not read: goings and narrow ends are set out by common practice and reported without a limit");
}
