using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

public sealed class CutterCornersTests
{
    private const double Cutter = 10;

    public static TheoryData<string> AllSamples => [.. Samples.Names];

    private static IReadOnlyList<LeftByCutter> Left(string sample, string mark, double cutter = Cutter) => CutterCorners.Of(Part(sample, mark), cutter);

    private static Part Part(string sample, string mark) => RodJobs.Stair(sample).Kit.Parts.First(p => p.Mark == mark);

    [Fact]
    public void A_mortice_has_four_corners_of_5_365_square_millimetres_each()
    {
        var left = Left("left-kite-low", "N1");
        // Two mortices and nothing else: the haunch between them opens into both.
        Assert.Equal(8, left.Count);
        Assert.All(left, l =>
        {
            Assert.Equal((LeftKind.Square, "MORTICE-62"), (l.Kind, l.Layer));
            Assert.Equal(90, l.Opening!.Value.Degrees, 6);
            Assert.Equal(25 - 25 * Math.PI / 4, l.Area, 0.003);
            Assert.Equal(5 * Math.Sqrt(2) - 5, l.Away, 0.001);
            Assert.Equal(5, l.ArcBegins(Cutter)!.Value, 9);
        });
    }

    [Fact]
    public void Wedge_room_has_the_corners_of_its_taper_and_they_may_stay_round()
    {
        // One in fourteen: 4.09 degrees off the square, one way at the thin end and the other at the thick one.
        var taper = Math.Atan(1 / 14.0) * 180 / Math.PI;
        var left = Left("straight-flight", "F1").Where(l => l.Layer == "HOUSING-12").ToList();
        Assert.All(left, l => Assert.Equal(LeftKind.MayStay, l.Kind));
        Assert.Equal([90 - taper, 90, 90 + taper], left.Select(l => l.Opening!.Value.Degrees).Order().Aggregate(new List<double>(), (seen, a) => { if (seen.Count == 0 || a - seen[^1] > 0.01) seen.Add(a); return seen; }), (a, b) => Math.Abs(a - b) < 0.001);
        // Each of the eleven wedged risers has two corners at its foot, each of the wedged treads one at its back.
        var wedged = RodJobs.Stair("straight-flight").Kit.Strings.Single(s => s.Part.Mark == "F1").Housings.Length;
        Assert.InRange(left.Count, wedged, 4 * wedged);
    }

    [Fact]
    public void A_nosing_piece_without_a_wedge_is_squared_where_it_ends() =>
        Assert.Contains(Left("straight-flight", "W1"), l => l is { Kind: LeftKind.Square, Layer: "HOUSING-12" } && l.Cut!.Joint.StartsWith("nosing", StringComparison.Ordinal));

    [Fact]
    public void A_tread_notched_round_a_newel_is_squared_in_the_notch()
    {
        var left = Assert.Single(Left("left-kite-low", "T1"));
        Assert.Equal(("OUTLINE", LeftKind.Square), (left.Layer, left.Kind));
    }

    [Fact]
    public void A_cheek_that_runs_out_on_three_sides_has_no_corner() => Assert.DoesNotContain(Left("left-kite-low", "F1"), l => l.Layer.StartsWith("CHEEK", StringComparison.Ordinal));

    [Fact]
    public void A_riser_narrower_than_the_cutter_is_told_as_that()
    {
        Assert.DoesNotContain(Left("straight-flight", "F1", 12), l => l.Kind == LeftKind.Narrow);
        var narrow = Left("straight-flight", "F1", 13).Where(l => l.Kind == LeftKind.Narrow).ToList();
        Assert.NotEmpty(narrow);
        Assert.All(narrow, l => Assert.Equal((null, "cutter does not go in"), (l.Opening, l.ToDo)));
        // All of a riser above its wedge, where it is as wide as the board alone.
        var practice = RodJobs.Stair("straight-flight").Job.Practice;
        Assert.Contains(narrow, l => l.Area > practice.Riser * 30);
    }

    [Fact]
    public void A_nosing_rounder_than_the_cutter_is_cut_by_it_and_a_tighter_one_is_not()
    {
        // Treads of 22 with a round of 11.
        Assert.DoesNotContain(Left("left-kite-low", "W2", 20), l => l.Kind == LeftKind.TightArc);
        Assert.Contains(Left("left-kite-low", "W2", 24), l => l.Kind is LeftKind.TightArc or LeftKind.Narrow);
    }

    /// <summary>Against a disc set down place by place: where the list says the cutter stays out, every disc that covers the corner bites into the wood; and the disc that made the arc does not.</summary>
    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("balustrade")]
    [InlineData("open-well")]
    public void A_disc_set_down_by_hand_says_the_same(string sample)
    {
        foreach (var part in RodJobs.Stair(sample).Kit.Parts.DistinctBy(p => p.Mark).Where(p => p.Kind.IsCarrier() || p.Kind is PartKind.TaperedTread))
            foreach (var spot in CutterCorners.Of(part, Cutter).Where(l => l.Opening is not null))
            {
                var arc = Enumerable.Range(0, spot.Shape.EdgeCount).Select(spot.Shape.Edge).Where(e => e.Bulge < 0).Select(e => Arc2.FromBulge(e.From, e.To, e.Bulge)).MinBy(a => Math.Abs(a.Radius - Cutter / 2));
                Assert.Equal(Cutter / 2, arc.Radius, 0.01);
                Assert.False(Bites(part, spot, arc.Centre, Cutter / 2 - 0.05), $"{part.Mark} at {spot.At}: the cutter does not fit where it was");
                // A quarter of the way out of the corner.
                var p = spot.At + 0.25 * spot.Away * (arc.Centre - spot.At).Unit;
                for (var i = 0; i < 36; i++)
                    foreach (var away in (double[])[0, 1, 2, 3, 4, Cutter / 2])
                        Assert.True(Bites(part, spot, p + away * Vector2.At(i * Math.PI / 18), Cutter / 2), $"{part.Mark} at {spot.At}: a cutter could stand there");
            }
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void No_sample_has_a_place_the_usual_cutter_cannot_follow(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        Assert.All(kit.Parts.DistinctBy(p => p.Mark), part => Assert.All(CutterCorners.Of(part, Cutter), l =>
        {
            Assert.True(l.Area > 0 && l.Away > 0);
            // A model's risers are thinner than any usual cutter.
            if (RodJobs.Stair(sample).Job.ModelScale == 1) Assert.NotEqual(LeftKind.Narrow, l.Kind);
            if (l.Opening is { } a) Assert.True(l.Area <= 25 * (1 / Math.Tan(a.Radians / 2) - (Math.PI - a.Radians) / 2) + 0.02);
        }));
    }

    /// <summary>Whether a disc in the drawing overlaps the wood that stands at the depth of a cut.</summary>
    private static bool Bites(Part part, LeftByCutter spot, Point2 centre, double radius)
    {
        var outline = MachiningFrame.Place(part, spot.Face, part.Faces[spot.Face].Outline);
        var open = spot.Cut is not { } cut ? [] : part.Cuts.Where(c => c.Face == spot.Face && c.Beneath == 0 && c.Depth >= cut.Depth && c.Kind != CutKind.RoundedEdge).Select(c => MachiningFrame.Place(part, c.Face, c.Shape)).ToList();
        return Enumerable.Range(0, 144).Select(i => centre + (i % 2 == 0 ? 1 : 0.97) * radius * Vector2.At(i * Math.PI / 72)).Any(p => outline.Holds(p) && !open.Exists(o => o.Holds(p)));
    }
}
