using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;
using Rodwright.Properties;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Surveys;

/// <summary>The headroom of the formula against the solids of the treads themselves.</summary>
public sealed class SolidHeadroomTests
{
    [Fact]
    public void Nothing_one_treads_on_is_nearer_to_what_is_above_than_the_headroom_says() => Rooms.All.Holds(job =>
    {
        if (Stair.SetOut(job).Value is not { } stair || HeadroomReport.Of(stair.Plan) is not { } report) return;
        var clear = report.Surfaces.Where(s => s.Step > 0 && s.Step < stair.Plan.Risers).ToDictionary(s => s.Step, s => Path2.Polygon(s.Ring));
        foreach (var above in report.Above)
        {
            var found = report.Under.FirstOrDefault(c => c.Under == above);
            var (nearest, nosing) = (double.PositiveInfinity, double.PositiveInfinity);
            foreach (var solid in KitSolids.Of(stair.Kit).Where(s => s.Part.Kind is PartKind.Tread or PartKind.TaperedTread))
            {
                var step = int.Parse(solid.Part.Mark[1..], System.Globalization.CultureInfo.InvariantCulture);
                if (above.IsTrimmer && step == stair.Plan.Risers - 1) continue;
                var top = solid.InWorld;
                var surface = report.Surfaces.First(s => s.Step == step);
                foreach (var p in Tops(top, step * stair.Plan.Rise))
                {
                    // Inside the clear width, a little, so that corners housed in strings do not count.
                    if (!clear[step].Holds(p) || above.Well is { } well && Path2.Polygon(well).Holds(p) != above.Inside) continue;
                    var clearance = above.HeightAt(p) - step * stair.Plan.Rise;
                    nearest = Math.Min(nearest, clearance);
                }
                // Along the nosing's edge tread and pitch surface are one: there the two agree.
                foreach (var part in Enumerable.Range(1, 399).Select(i => i / 400.0))
                {
                    var p = Edge(surface, part);
                    Assert.Equal(step * stair.Plan.Rise, surface.HeightAt(p), 1e-6);
                    if (above.Well is { } ring && Path2.Polygon(ring).Holds(p) != above.Inside) continue;
                    nosing = Math.Min(nosing, above.HeightAt(p) - step * stair.Plan.Rise);
                }
            }
            if (double.IsFinite(nearest) || double.IsFinite(nosing)) Assert.NotNull(found);
            if (found is null) continue;
            Assert.True(nearest >= found.Least - 1e-6, $"{nearest} under the solid, {found.Least} by the formula");
            Assert.True(nosing >= found.Least - 1e-6, $"{nosing} at the nosings, {found.Least} by the formula");
        }
    }, iter: 200);

    [Fact]
    public void What_the_headroom_says_is_reached_over_the_nosings_of_the_solids()
    {
        var reached = 0;
        Rooms.All.Holds(job =>
        {
            if (Stair.SetOut(job).Value is not { } stair || HeadroomReport.Of(stair.Plan) is not { } report) return;
            var nosings = SolidNosings.Of(stair);
            foreach (var found in report.Under)
            {
                // Floors and landings are level: there is no pitch line over them.
                if (found.Step < 1 || found.Step >= stair.Plan.Risers) continue;
                var walked = stair.Plan.Steps[found.Step - 1] == StepKind.Landing
                    ? found.Step * stair.Plan.Rise
                    : SolidNosings.PitchAt(nosings[found.Step], nosings[found.Step + 1], found.At);
                Assert.Equal(found.Least, found.Under.HeightAt(found.At) - walked, 1e-6);
                reached++;
            }
        }, iter: 200);
        Assert.True(reached > 100, $"only {reached} places were looked at");
    }

    [Fact]
    public void Where_the_least_lies_at_a_nosing_the_solid_says_the_same()
    {
        // A level ceiling of the lower storey over the whole stair: the highest tread's nosing is nearest to it.
        var job = Samples.Job("left-kite-low");
        var stair = Stair.SetOut(job with
        {
            Survey = job.Survey with { Ceilings = [new() { Storey = Stairs.Surveys.Storey.Lower, First = new() { Height = Stairs.Surveys.Readings.Of(4600) }, Second = new() { Out = 1000 }, Pitch = 0 }] },
        }).Value!;
        var report = HeadroomReport.Of(stair.Plan)!;
        // The upper floor's own nosing piece stands at the full height.
        var highest = KitSolids.Of(stair.Kit).Where(s => s.Part.Kind is PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece).SelectMany(s => s.InWorld.Vertices).Max(v => v.Z);
        Assert.Equal(4600 - highest, report.Least!.Least, 1e-6);
        Assert.Equal(4600 - job.Survey.Height, report.Least.Least, 1e-6);
    }

    /// <summary>A point of the nosing line between the boundaries.</summary>
    private static Point2 Edge(WalkedSurface surface, double part)
    {
        var ends = surface.Ring.Where(p => Math.Abs(surface.Front.LeftOf(p)) < 1e-6).OrderBy(surface.Front.Station).ToList();
        return ends[0].Towards(ends[^1], part);
    }

    /// <summary>Places on the top of a tread's solid: its corners and a grid over each of its upper faces' triangles.</summary>
    private static IEnumerable<Point2> Tops(Geometry.Solids.Solid solid, double height)
    {
        var triangles = solid.Triangles();
        for (var i = 0; i < triangles.Length; i += 3)
        {
            var (a, b, c) = (solid.Vertices[triangles[i]], solid.Vertices[triangles[i + 1]], solid.Vertices[triangles[i + 2]]);
            if (Math.Abs(a.Z - height) > 0.01 || Math.Abs(b.Z - height) > 0.01 || Math.Abs(c.Z - height) > 0.01) continue;
            for (var u = 0; u <= 20; u++)
                for (var v = 0; u + v <= 20; v++)
                    yield return a.Plan.Towards(b.Plan, u / 20.0) + (v / 20.0) * (c.Plan - a.Plan);
        }
    }
}
