using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Regulations;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Starts;

/// <summary>
/// Begins a job from the few things known at first: risers and going are tried until the stair keeps its regulation, and if none does, the one that breaks
/// least of it is begun with; its findings say the rest.
/// </summary>
public static class BlankJobs
{
    // Rises people climb with ease, mm; a regulation may allow less and then decides.
    private const double LeastRise = 160, MostRise = 222;

    // Nearest to the usual pace of 620 first.
    private static readonly ImmutableArray<double> MetricGoings = [225, 230, 223, 240, 250, 254, 260, 280];

    // 9 to 11 inches by quarters and halves, 10 first: the least the International Residential Code takes.
    private static readonly ImmutableArray<double> InchGoings = [.. new[] { 10, 10.25, 10.5, 9, 9.5, 11, 11.5 }.Select(i => Units.Inches.Stock(i * Units.Inch))];

    /// <summary>What a kind of stair is called.</summary>
    public static string Words(BlankKind kind) => kind switch
    {
        BlankKind.Straight => "straight flight",
        BlankKind.TurnLow => "three tapered steps near the foot",
        BlankKind.TurnHigh => "three tapered steps near the head",
        _ => "quarter landing half way",
    };

    /// <summary>The job, or everything that is wrong with what was typed.</summary>
    /// <param name="wishes">What was typed.</param>
    /// <param name="tables">The tables it may be judged by; the published ones when null.</param>
    public static Outcome<Job> Make(BlankWishes wishes, RegulationShelf? tables = null)
    {
        var goings = wishes.Units.IsInches ? InchGoings : MetricGoings;
        var first = Begun(wishes, 13, goings[0]);
        if (first.Value is not { } job) return first;
        var tried = RiserSplit.Between(job.Survey.Height, LeastRise, MostRise)
            .SelectMany(split => goings.Select(going => (split.Risers, Going: going)))
            .OrderBy(t => Math.Abs(2 * job.Survey.Height / t.Risers + t.Going - 620))
            .Select(t => Begun(wishes, t.Risers, t.Going).Value).OfType<Job>();
        Job? best = null;
        var least = int.MaxValue;
        foreach (var candidate in tried)
        {
            if (Stair.SetOut(candidate, shelf: tables).Value is not { } stair) continue;
            var breaches = stair.Findings.Count(f => f.Severity >= Severity.Breach);
            if (breaches < least) (best, least) = (candidate, breaches);
            if (breaches == 0) break;
        }
        return best is null ? first : Outcome<Job>.Of(best, []);
    }

    private static Outcome<Job> Begun(BlankWishes wishes, int risers, double going)
    {
        var start = SampleJobs.All[0] with { Units = wishes.Units, Sides = Sides.For(wishes.Hand), Practice = new(), ModelScale = 1, Survey = new() { FloorToFloor = [2600] } };
        var steps = risers - 1;
        return JobEdits.Apply(start, new JobEdit(
        [
            FieldChange.To("title", wishes.Title.Trim()),
            FieldChange.To("regulation", wishes.Regulation),
            FieldChange.To("layout.hand", wishes.Hand == Hand.Left ? "left" : "right"),
            FieldChange.To("going", going),
            FieldChange.ToDefault("practice"),
            JobEdits.Set(start, "survey.floorToFloor", wishes.Height).Changes[0],
            JobEdits.Set(start, "width", wishes.Width).Changes[0],
            new(FieldChange.SequencePath, Sequence(wishes.Kind, steps).ToJsonString()),
        ], ""));
    }

    private static JsonArray Sequence(BlankKind kind, int steps) => kind switch
    {
        BlankKind.Straight => [Flight(steps)],
        BlankKind.TurnLow => [Flight(2), Winders(), Flight(steps - 5)],
        BlankKind.TurnHigh => [Flight(steps - 5), Winders(), Flight(2)],
        _ => [Flight((steps - 1) / 2), new JsonObject { ["turn"] = "landing" }, Flight(steps - 1 - (steps - 1) / 2)],
    };

    private static JsonObject Flight(int goings) => new() { ["flight"] = goings };

    private static JsonObject Winders() => new() { ["turn"] = "winders", ["steps"] = 3 };
}
