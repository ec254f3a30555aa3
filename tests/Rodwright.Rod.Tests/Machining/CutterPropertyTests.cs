using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Rod.Machining;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>What a round cutter leaves, over made-up stairs of every layout.</summary>
public sealed class CutterPropertyTests
{
    [Fact]
    public void A_cutter_is_followed_round_every_piece_of_any_stair_and_leaves_in_a_corner_what_the_formula_says()
    {
        var corners = 0;
        Generated.All.Holds(job =>
        {
            if (Stair.SetOut(job).Value is not { } stair) return;
            foreach (var part in stair.Kit.Parts.DistinctBy(p => p.Mark))
            {
                foreach (var left in CutterCorners.Of(part, 10).Where(l => l.Kind is LeftKind.Square or LeftKind.MayStay))
                {
                    // By hand: two tangents from the corner to a circle of radius r enclose r cot(a/2) each way, less the sector of pi - a.
                    var a = left.Opening!.Value.Radians;
                    var full = 25 * (1 / Math.Tan(a / 2) - (Math.PI - a) / 2);
                    Assert.True(left.Area <= full + 0.05, $"{part.Mark}: {left.Area} left in a corner of {left.Opening.Value.Degrees} degrees, {full} by the formula");
                    Assert.True(left.Away <= 5 * (1 / Math.Sin(a / 2) - 1) + 0.05, $"{part.Mark}: stays {left.Away} out of {left.Opening.Value.Degrees} degrees");
                    Interlocked.Increment(ref corners);
                }
            }
        }, iter: 250);
        Assert.True(corners > 5000, $"only {corners} corners");
    }
}
