using CsCheck;
using Rodwright.Geometry;
using Rodwright.Properties;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Headroom;

public sealed class HeadroomTests
{
    private const double Going = 225;

    /// <summary>14 risers of 180, clear 796, its outer side walled; the well from a place along the wall, 9000 long.</summary>
    private static StairPlan Flight(double wellFrom, double trimmer = 255, params SlopingCeiling[] ceilings)
    {
        var job = Bench.Flight(2520, 14, Going);
        return (job with
        {
            Survey = job.Survey with { Well = new() { Along = wellFrom, Length = Readings.Of(9000), Width = Readings.Of(1200), Trimmer = Readings.Of(trimmer) }, Ceilings = [.. ceilings] },
        }).Plan();
    }

    [Fact]
    public void A_flight_under_the_edge_of_its_well_worked_by_hand()
    {
        // The edge stands 500 up the stair: 520 behind nosing 1, where the pitch surface is 180 + 520 * 180 / 225 = 596 high. The soffit is 2520 - 255 = 2265.
        var report = HeadroomReport.Of(Flight(500))!;
        Assert.Equal(2265 - 596, report.Least!.Least, 1e-9);
        Assert.Equal(3, report.Least.Step);
        Assert.Equal(500, report.Least.At.Y, 1e-9);
        Assert.Equal("the trimmer", report.Least.Under.Name);
        Assert.Equal(0, report.ArrivalCovered);
        // 331 more is wanted for 2000: 331 * 225 / 180 = 413.75 along the stair.
        var longer = Assert.Single(WellLonger.For(report, 2000));
        Assert.Equal(331.0 * 225 / 180, longer.By, 1e-9);
        Assert.Equal("towards the foot", HeadroomWords.Towards(Flight(500), longer));
    }

    /// <summary>
    /// Goring, Manual of Purpose-Made Woodworking Joinery, p. 103: headroom 2000 and 40, floor 225 + 18 + 12, rise 180: 2295, or 12 3/4 risers, lie between the
    /// upper floor and the pitch line under the bulkhead.
    /// </summary>
    [Fact]
    public void Outside_the_published_bulkhead_stands_twelve_and_three_quarter_risers_down()
    {
        const double floor = 225 + 18 + 12;
        Assert.Equal(12.75, (2000 + 40 + floor) / 180);
        // 14 risers: 1 1/4 above the lower floor, a quarter of a going behind nosing 1, whose edge is 20 before the riser.
        var report = HeadroomReport.Of(Flight(-20 + 0.25 * Going, floor))!;
        Assert.Equal(2040, report.Least!.Least, 1e-9);
        Assert.Equal(1.25 * 180, report.Surfaces.First(s => s.Step == 1).HeightAt(report.Least.At), 1e-9);
    }

    /// <summary>
    /// Hasluck, Practical Staircase Joinery, ch. VI: headroom is told plumb (7 ft 6 in) and square to the nosing line (5 ft 6 in), with 6 ft 6 in wanted: square measure is plumb measure
    /// times the cosine of the pitch.
    /// </summary>
    [Fact]
    public void Outside_headroom_square_to_the_nosings_is_plumb_headroom_by_the_cosine_of_the_pitch()
    {
        const double inch = 25.4;
        var pitch = Angle.OfPitch(180, Going);
        // A raking ceiling parallel to the pitch line, 66 in off it squarely: 66 / cos plumb above the nosings.
        var plumb = 66 * inch / pitch.Cosine;
        var ceiling = new SlopingCeiling
        {
            Storey = Storey.Lower, First = new() { Along = -20, Height = Readings.Of(180 + plumb) }, Second = new() { Along = 980 }, Pitch = pitch.Degrees,
        };
        var least = HeadroomReport.Of(Flight(-3000, 255, ceiling))!.Under.Single(c => c.Under.Ceiling == 0);
        // Before the foot the ceiling goes on down over the level floor.
        Assert.True(least.Step == 0 || Tolerance.IsSame(least.Least, plumb));
        var report = HeadroomReport.Of(Flight(-3000, 255, ceiling))!;
        foreach (var surface in report.Surfaces.Where(s => s.Step is > 0 and < 14))
            foreach (var p in surface.Ring) Assert.Equal(plumb, report.Above[1].HeightAt(p) - surface.HeightAt(p), 1e-6);
        Assert.Equal(plumb >= 78 * inch, pitch.Cosine <= 66.0 / 78);
    }

    [Fact]
    public void A_slope_across_the_stair_is_lowest_at_its_low_side_and_is_known_in_the_middle_too()
    {
        // Over the upper floor, 1500 at the wall and rising 45 degrees out from it; the string's face is 32 from the wall.
        var ceiling = new SlopingCeiling { Name = "roof", First = new() { Height = Readings.Of(1500) }, Second = new() { Out = 1000 }, Pitch = 45 };
        var report = HeadroomReport.Of(Flight(-3000, 255, ceiling))!;
        var under = report.Under.Single(c => c.Under.Name == "roof");
        Assert.Equal(1532, under.Least, 1e-9);
        // The top newel, 90 on a string of 32, narrows the top nosing by 29.
        Assert.Equal(1532 + (796 - 29) / 2.0, report.InMiddle.Single(c => c.Under.Name == "roof").Least, 1e-9);
    }

    [Fact]
    public void A_floor_that_would_lie_on_the_top_step_is_told_apart_from_headroom()
    {
        // The last riser's face is at 13 * 225 = 2925, its nosing at 2905: a well that ends at 2850 covers 55 of the top step.
        var job = Bench.Flight(2520, 14, Going);
        var plan = (job with { Survey = job.Survey with { Well = new() { Along = -1000, Length = Readings.Of(3850), Width = Readings.Of(1200), Trimmer = Readings.Of(255) } } }).Plan();
        Assert.Equal(55, HeadroomReport.Of(plan)!.ArrivalCovered, 1e-9);
    }

    [Fact]
    public void A_well_without_a_place_ends_at_the_trimmer_the_stair_arrives_at()
    {
        var job = Bench.Flight(2520, 14, Going);
        var plan = (job with { Survey = job.Survey with { Well = new() { Length = Readings.Of(2437), Width = Readings.Of(1200), Trimmer = Readings.Of(255) } } }).Plan();
        // 2925 and the riser's 12: from 500 on, as in the first test.
        Assert.Equal(2265 - 596, HeadroomReport.Of(plan)!.Least!.Least, 1e-9);
    }

    [Fact]
    public void Headroom_is_not_checked_where_nothing_above_was_measured()
    {
        var check = Bench.Flight(2520, 14, Going).Plan().Check("headroom");
        Assert.Equal(CheckOutcome.NotChecked, check.Outcome);
        Assert.Contains("survey.well", check.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, CheckOutcome.Pass)]
    [InlineData(500, CheckOutcome.Fail)]
    public void The_regulation_judges_what_was_measured(double wellFrom, CheckOutcome outcome) => Assert.Equal(outcome, Flight(wellFrom).Check("headroom").Outcome);

    [Fact]
    public void Under_a_sloping_roof_England_judges_the_middle_and_the_side()
    {
        var ceiling = new SlopingCeiling { Name = "roof", First = new() { Height = Readings.Of(1800) }, Second = new() { Out = 1000 }, Pitch = 20 };
        var plan = Flight(-3000, 255, ceiling);
        Assert.Equal(CheckOutcome.NotChecked, plan.Check("headroom").Outcome);
        Assert.Equal(CheckOutcome.Pass, plan.Check("headroom-middle").Outcome);
        Assert.Equal(CheckOutcome.Pass, plan.Check("headroom-side").Outcome);
    }

    [Fact]
    public void The_formula_finds_what_a_dense_search_finds() => Rooms.All.Holds(job =>
    {
        if (job.TryPlan() is not { } plan || HeadroomReport.Of(plan) is not { } report) return;
        // Where a taper is so strong that a riser's end comes before the one below it (told as RW4017), the step is turned inside out and has no area to look over.
        if (report.Surfaces.Any(s => Backwards(s.Ring))) return;
        foreach (var above in report.Above)
        {
            var searched = Search.Least(report, above);
            var found = report.Under.FirstOrDefault(c => c.Under == above);
            if (searched is not { } s)
            {
                continue;
            }
            Assert.NotNull(found);
            Assert.True(found.Least <= s + 1e-6, $"{found.Least} found, {s} by search under {above.Name}");
            Assert.True(found.Least >= s - 12, $"{found.Least} found, {s} by search under {above.Name} at {found.At} step {found.Step}");
            // And it is attained where it is said to be.
            Assert.Equal(found.Least, above.HeightAt(found.At) - report.Surfaces.First(x => x.Step == found.Step).HeightAt(found.At), 1e-6);
        }
    }, iter: 5000);

    /// <summary>Whether two sides of a ring cross.</summary>
    private static bool Backwards(IReadOnlyList<Point2> ring)
    {
        for (var i = 0; i < ring.Count; i++)
            for (var j = i + 2; j < ring.Count; j++)
                if (Parts(ring[i], ring[i + 1], ring[j], ring[(j + 1) % ring.Count]) && Parts(ring[j], ring[(j + 1) % ring.Count], ring[i], ring[i + 1])) return true;
        return false;

        // Whether the line through a and b has c and d truly on different sides.
        static bool Parts(Point2 a, Point2 b, Point2 c, Point2 d) => (b - a).Cross(c - a) * (b - a).Cross(d - a) < -1e-6;
    }

    [Fact]
    public void A_mirrored_stair_has_the_mirrored_headroom() => Rooms.All.Holds(job =>
    {
        if (job.TryPlan() is not { } plan) return;
        var (left, right) = (HeadroomReport.Of(plan)!, HeadroomReport.Of(plan.Mirrored())!);
        Assert.Equal(left.Under.Length, right.Under.Length);
        for (var i = 0; i < left.Under.Length; i++)
        {
            Assert.Equal(left.Under[i].Least, right.Under[i].Least, 1e-6);
            var other = right.Surfaces.First(s => s.Step == left.Under[i].Step);
            Assert.Equal(left.Under[i].Least, right.Under[i].Under.HeightAt(left.Under[i].At.Mirrored) - other.HeightAt(left.Under[i].At.Mirrored), 1e-6);
        }
    }, iter: 5000);

    [Fact]
    public void A_larger_well_never_lowers_the_headroom() => Rooms.Jobs.Select(Gen.Int[0, 600], Gen.Int[0, 600]).Holds((job, longer, wider) =>
    {
        if (job.Survey.Well is not { IsRectangle: true } well || job.TryPlan() is not { } plan) return;
        var larger = plan with { Job = job with { Survey = job.Survey with { Well = well with { Length = Readings.Of(well.Length.Mean + longer), Width = Readings.Of(well.Width.Mean + wider) } } } };
        var (before, after) = (Trimmer(plan), Trimmer(larger));
        Assert.True(after is null || before is not null && after >= before - 1e-6, $"{before} became {after}");

        static double? Trimmer(StairPlan plan) => HeadroomReport.Of(plan)!.Under.FirstOrDefault(c => c.Under.IsTrimmer)?.Least;
    }, iter: 5000);

    [Fact]
    public void A_well_made_longer_as_told_just_gives_the_headroom() => Rooms.Jobs.Holds(job =>
    {
        if (job.Survey.Well is not { IsRectangle: true } || job.TryPlan() is not { } plan || HeadroomReport.Of(plan) is not { } report) return;
        var longer = WellLonger.For(report, 2000);
        Assert.Equal(longer.IsEmpty, report.Under.All(c => !c.Under.IsTrimmer || c.Least >= 2000 - 1e-6));
        if (longer.IsEmpty) return;
        Assert.True(Trimmer(Moved(0)) >= 2000 - 1e-6);
        Assert.True(Trimmer(Moved(1)) < 2000);

        // The well with its edges where they are told to go, one of them so much short of it.
        StairPlan Moved(double lacking)
        {
            var frame = RoomFrame.Of(plan);
            var ring = report.Above[0].Well!.Value;
            var sides = Enumerable.Range(0, ring.Length).Select(i => Line2.Between(ring[i], ring[(i + 1) % ring.Length])).ToList();
            foreach (var edge in longer) sides[edge.Edge] = sides[edge.Edge].OffsetLeft(-(edge.By - (edge == longer[0] ? lacking : 0)));
            var corners = Enumerable.Range(0, ring.Length).Select(i => frame.ToRoom(sides[(i + ring.Length - 1) % ring.Length].Cross(sides[i])!.Value));
            return plan with { Job = job with { Survey = job.Survey with { Well = new() { Corners = [.. corners], Trimmer = job.Survey.Well!.Trimmer } } } };
        }

        static double Trimmer(StairPlan plan) => HeadroomReport.Of(plan)!.Under.FirstOrDefault(c => c.Under.IsTrimmer)?.Least ?? double.PositiveInfinity;
    }, iter: 5000);
}
