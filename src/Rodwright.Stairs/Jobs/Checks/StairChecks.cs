using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>The stair as a whole: readings, steps, rise, width and sides.</summary>
internal static class StairChecks
{
    /// <summary>Most steps this version sets out.</summary>
    private const int MostSteps = 60;

    /// <summary>Rises outside these are a slip of the pen, not a stair; times the model scale, mm.</summary>
    private const double LeastRise = 80, MostRise = 300;

    /// <summary>Less clear width than this is no stair; times the model scale, mm.</summary>
    private const double LeastClear = 200;

    /// <summary>The fields the height is worked out from.</summary>
    public static ImmutableArray<string> Height { get; } = ["survey.floorToFloor", "survey.tolerance", "survey.lowerFinish", "survey.upperFinish"];

    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.ReadingsDisagree, "survey.floorToFloor", ["survey.floorToFloor", "survey.tolerance"], Disagree),
        new(JobCodes.Readings, "survey.floorToFloor", ["survey.floorToFloor", "survey.tolerance"], Several) { Severity = Severity.Note },
        new(JobCodes.Finishes, "survey.upperFinish", Height, Finishes),
        new(JobCodes.NoSteps, "layout.sequence", ["layout.sequence"], NoSteps),
        new(JobCodes.TooManySteps, "layout.sequence", ["layout.sequence"], TooManySteps),
        new(JobCodes.Rise, "survey.floorToFloor", [.. Height, "layout.sequence", "modelScale"], Rise),
        new(JobCodes.Width, "width", ["width", "sides", "layout", "modelScale", "practice.wallString.thickness", "practice.newelString.thickness"], Width),
    ];

    private static Pinch? Disagree(Job job) => job.Survey.Spread <= job.Survey.Tolerance ? null : new(
        $"the readings lie {job.Units.With(job.Survey.Spread)} apart, from {job.Units.With(job.Survey.FloorToFloor.Min())} to {job.Units.With(job.Survey.FloorToFloor.Max())}; {job.Units.With(job.Survey.Tolerance)} is allowed",
        "measure again from the finished floors; if the floors really differ, give the reading where the stair lands or raise survey.tolerance");

    private static Pinch? Several(Job job) => job.Survey.FloorToFloor.Length < 2 || job.Survey.Spread > job.Survey.Tolerance ? null : new(
        $"{job.Survey.FloorToFloor.Length} readings of the height, {job.Units.With(job.Survey.Spread)} apart; the work is set out to their mean, {job.Units.With(job.Survey.FloorToFloor.Average())}",
        "give one reading to work to that alone");

    private static Pinch? Finishes(Job job) => job.Survey.FloorToFloor.IsEmpty || job.Survey.Height > 0 ? null : new(
        $"the floors still to come, {job.Units.With(job.Survey.LowerFinish)} below and {job.Units.With(job.Survey.UpperFinish)} above, leave no height between them",
        "what is still to come on the lower floor takes from the height, on the upper floor it adds; look at the signs");

    private static Pinch? NoSteps(Job job) => job.Layout.Risers > 1 ? null : new(
        "the sequence has no steps at all: zero risers cannot be set out", "give a flight at least one going, or add a turn");

    private static Pinch? TooManySteps(Job job) => job.Layout.Risers - 1 <= MostSteps ? null : new(
        $"the sequence has {job.Layout.Risers - 1} steps; at most {MostSteps} are set out", "one stair from floor to floor rarely has more than 16");

    /// <summary>Whether there is a rise to compare with: not without steps, with too many of them, with readings that disagree, or when it is refused itself.</summary>
    public static bool HasRise(Job job) => IsShared(job) && Rise(job) is null;

    private static bool IsShared(Job job) => NoSteps(job) is null && TooManySteps(job) is null && Disagree(job) is null && Finishes(job) is null;

    private static Pinch? Rise(Job job)
    {
        if (!IsShared(job)) return null;
        var (least, most) = (LeastRise * job.ModelScale, MostRise * job.ModelScale);
        if (job.Rise >= least && job.Rise <= most) return null;
        var fewest = Math.Ceiling(job.Survey.Height / (220 * job.ModelScale));
        return new(
            $"{job.Units.With(job.Survey.Height)} in {job.Layout.Risers} risers makes a rise of {job.Units.With(job.Rise)}; {job.Units.With(least)} to {job.Units.With(most)} is allowed",
            $"check the height and the number of steps: {Number.Print(fewest)} risers, {Number.Print(fewest - 1)} steps, would rise {job.Units.With(job.Survey.Height / fewest)}",
            Way.Of(Remedied.Risers(job, (int)Math.Min(fewest, MostSteps + 1))));
    }

    private static Pinch? Width(Job job)
    {
        var strings = Thickness(job, job.InnerSide) + Thickness(job, job.OuterSide);
        var least = LeastClear * job.ModelScale;
        return job.Width - strings >= least ? null : new(
            $"{job.Units.With(job.Width)} over strings less {job.Units.With(strings)} of string leaves {job.Units.With(job.Width - strings)} clear; {job.Units.With(least)} is the least",
            $"make the stair at least {job.Units.With(strings + least)} over strings",
            Remedied.Width(job.Units, Math.Ceiling(strings + least)));
    }

    private static double Thickness(Job job, SideKind side) => side == SideKind.Wall ? job.Practice.WallString.Thickness : job.Practice.NewelString.Thickness;
}
