using Rodwright.Geometry;
using Rodwright.Joinery.Balustrades;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Carriages;

/// <summary>
/// Makes carriages under straight flights: a rough string whose upper edge runs along the lower edges of the risers, on the floor below and against the trimmer above, with brackets on its side up to the treads. Left-hand frame.
/// </summary>
internal static class CarriageMaker
{
    // A bracket begins so far behind its riser, clear of a glue block there, and laps so far down the carriage's side, mm (common practice).
    private const double BehindBlock = 6, Lap = 60;

    // So many risers make a flight that one can run under.
    private const int Least = 3;

    /// <summary>Says so where the width asks for a carriage and the job wants none.</summary>
    public static void Advise(StairPlan plan, List<Finding> findings)
    {
        // By the wider of the usual widths, three feet, whatever the job is written in: it is one stair.
        var count = Carriage.Usual(Units.Inches).For(plan.ClearWidth);
        var flights = plan.Flights.Where(f => Under(plan, f).Count >= Least).ToList();
        if (plan.Job.Carriage is not null || count == 0 || flights.Count == 0) return;
        var carriages = count == 1 ? "a carriage" : $"{Number.Print(count, 0)} carriages";
        findings.Add(new("RW4110", Severity.Note, "width",
            $"{plan.Units.With(plan.ClearWidth)} between the strings is wide for two strings alone: {carriages} under each straight flight would stiffen the steps", "carriages with brackets (carriage)")
        {
            Remedies = [Remedy.Of($"{carriages} under each straight flight", new FieldChange("carriage", "{}"))],
        });
    }

    /// <summary>Square risers of a flight, with straight treads between them.</summary>
    private static List<int> Under(StairPlan plan, FlightPlan flight) =>
        [.. Enumerable.Range(flight.FirstRiser, flight.LastRiser - flight.FirstRiser + 1).Where(k => plan.Riser(k).Up.Dot(flight.Along) > 1 - 1e-9)];

    /// <summary>Adds carriages and brackets to the parts and gives their joints.</summary>
    public static List<Joint> Add(StairPlan plan, List<Part> parts)
    {
        var joints = new List<Joint>();
        var count = plan.Job.Carriage!.For(plan.ClearWidth);
        var (n, marks) = (0, new ShapeMarks("CB"));
        foreach (var flight in plan.Flights)
        {
            var risers = Under(plan, flight);
            if (risers.Count < Least) continue;
            for (var i = 0; i < count; i++) One(plan, flight, risers, (i + 1.0) / (count + 1), ++n, marks, parts, joints);
        }
        return joints;
    }

    private static void One(StairPlan plan, FlightPlan flight, List<int> risers, double across, int number, ShapeMarks marks, List<Part> parts, List<Joint> joints)
    {
        var (practice, carriage, slope) = (plan.Job.Practice, plan.Job.Carriage!, plan.Rise / plan.Going);
        // A riser at an end of the flight may end on a newel: one between them tells the strings' faces.
        var (first, last, between) = (risers[0], risers[^1], plan.Riser(risers[risers.Count / 2]));
        var upright = new Upright(new(between.Inner.Towards(between.Outer, across), flight.Along), false);
        var (deep, thick) = (carriage.Section.Width / plan.Pitch.Cosine, carriage.Section.Thickness);
        var isOnFloor = first == 1 || plan.Steps[first - 2] == StepKind.Landing;
        var level = (first - 1) * plan.Rise;
        var begin = At(first) + practice.Riser;
        var end = At(last) + practice.Riser + (plan.Steps[last - 1] is StepKind.Floor or StepKind.Landing ? practice.Packing : 0);
        Point2[] foot = isOnFloor ? [new(WhereAt(level), level), new(WhereAt(level + deep), level)] : [new(begin, Edge(begin)), new(begin, Edge(begin) - deep)];
        var outline = Path2.Polygon([.. foot, new(end, Edge(end) - deep), new(end, Edge(end))]);
        var id = $"carriage-{Number.Print(number, 0)}";
        parts.Add(new()
        {
            Id = id, Name = "carriage " + Number.Print(number, 0), Mark = "CG" + Number.Print(number, 0), Kind = PartKind.Carriage, Material = practice.Timber,
            Blank = upright.Around(outline, new Vector2(1, slope).Unit, thick), Faces = [new("face side", upright.Frame(thick), outline, thick)],
        });
        // A riser runs down behind its tread with its lower back edge on the carriage; one that stands on its tread does not reach it.
        if (!practice.RiserOnTread)
            foreach (var k in risers.Where(k => k > first)) joints.Add(new($"{id}/riser-{Number.Print(k, 0)}", JointKind.CarriageUnderRiser, id, $"riser-{Number.Print(k, 0)}", 0));
        foreach (var k in risers.SkipLast(1).Where(k => plan.Steps[k - 1] == StepKind.Straight))
        {
            var (from, to, top) = (At(k) + practice.Riser + (plan.Job.SmallParts?.BlockSide ?? 0) + BehindBlock, At(k + 1), k * plan.Rise - practice.Tread);
            if (to - from < 20 || Edge(from) - Lap < level) continue;
            var shape = Path2.Polygon(new Point2(from, Edge(from) - Lap), new(to, Edge(to) - Lap), new(to, top), new(from, top));
            var bracket = $"carriage-bracket-{Number.Print(number, 0)}-{Number.Print(k, 0)}";
            var blank = upright.Around(shape, new(1, 0), carriage.Bracket);
            parts.Add(new()
            {
                Id = bracket, Name = $"bracket of step {Number.Print(k, 0)} on carriage {Number.Print(number, 0)}", Mark = marks.Of(shape, blank), Kind = PartKind.CarriageBracket,
                Material = practice.Timber, Blank = blank, Faces = [new("face side", upright.FrameAt(thick / 2 + carriage.Bracket), shape, carriage.Bracket)],
            });
            joints.Add(new($"{bracket}/{id}", JointKind.BracketToCarriage, bracket, id, 0));
            joints.Add(new($"{bracket}/tread-{Number.Print(k, 0)}", JointKind.BracketUnderTread, bracket, $"tread-{Number.Print(k, 0)}", 0));
        }

        double At(int k) => upright.Centre.Station(plan.Riser(k).Inner);

        // The line of the risers' lower back edges.
        double Edge(double s) => first * plan.Rise - practice.Tread + (s - At(first + 1) - practice.Riser) * slope;

        double WhereAt(double z) => At(first + 1) + practice.Riser + (z - first * plan.Rise + practice.Tread) / slope;
    }
}
