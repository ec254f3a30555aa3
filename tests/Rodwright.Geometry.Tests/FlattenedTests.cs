using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

/// <summary>Chords of arcs, down to arcs so shallow that their centre lies a million kilometres off.</summary>
public class FlattenedTests
{
    [Theory]
    [InlineData(2e-8)]
    [InlineData(1e-6)]
    [InlineData(-1e-4)]
    public void A_shallow_arc_is_flattened_to_points_of_its_parabola(double bulge)
    {
        // So shallow that the parabola through its ends and its middle leaves it by nothing that can be seen.
        var points = new Path2([new(new(-500, 100), bulge), new(new(500, 100))], false).Flattened();
        Assert.True(points.Count >= 3);
        Assert.All(points, p => Assert.Equal(100 - bulge * 500 * (1 - p.X * p.X / 250000), p.Y, 1e-9));
    }

    [Fact]
    public void Points_of_a_flattened_arc_lie_on_its_circle() =>
        Gen.Select(Shapes.Chords, Shapes.Bulges).Holds((chord, bulge) =>
        {
            var arc = Arc2.FromBulge(chord.From, chord.To, bulge);
            var points = new Path2([new(chord.From, bulge), new(chord.To)], false).Flattened(1);
            var part = 0;
            return points.All(p => p.DistanceTo(arc.At((double)part++ / (points.Count - 1))) < 1e-12 * (arc.Radius + 10000) / Math.Min(1, Math.Abs(bulge)));
        });
}
