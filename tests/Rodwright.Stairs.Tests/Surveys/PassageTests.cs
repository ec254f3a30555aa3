using CsCheck;
using Rodwright.Geometry;
using Rodwright.Properties;
using Rodwright.Stairs.Surveys;
using Xunit;

namespace Rodwright.Stairs.Tests.Surveys;

public sealed class PassageTests
{
    private static WayInStop Turn(double a, double b, double height = 2400) => new() { Kind = WayInKind.Turn, Width = a, WidthOut = b, Height = height };

    /// <summary>The ladder round a corner, in any calculus text: (a^2/3 + b^2/3)^3/2.</summary>
    [Theory]
    [InlineData(900, 900, 2545.584412)]
    [InlineData(1000, 800, 2540.3315)]
    public void A_plank_of_no_thickness_turns_as_the_ladder_does(double a, double b, double longest)
    {
        Assert.Equal(Math.Pow(Math.Pow(a, 2.0 / 3) + Math.Pow(b, 2.0 / 3), 1.5), Passage.LongestLevel(0, a, b), 1e-6);
        Assert.Equal(longest, Passage.LongestLevel(0, a, b), 0.01);
    }

    [Fact]
    public void Equal_passages_turn_a_thick_plank_at_forty_five_degrees() =>
        // L = 2 (a √2 - t) by symmetry.
        Assert.Equal(2 * (900 * Math.Sqrt(2) - 32), Passage.LongestLevel(32, 900, 900), 1e-6);

    [Fact]
    public void The_longest_plank_just_clears_the_inner_corner_at_every_angle() =>
        Gen.Select(Gen.Double[600, 1500], Gen.Double[600, 1500], Gen.Double[0, 500]).Holds((a, b, thick) =>
        {
            var longest = Passage.LongestLevel(thick, a, b);
            var touches = double.PositiveInfinity;
            for (var i = 1; i < 20_000; i++)
            {
                // The outer side from (L cos t, 0) to (0, L sin t); the corner at (a, b) stands so far off it, and the plank is so thick.
                var t = Math.PI / 2 * i / 20_000;
                var side = Line2.Between(new(longest * Angle.Cos(t), 0), new(0, longest * Angle.Sin(t)));
                touches = Math.Min(touches, -side.LeftOf(new(a, b)) - thick);
            }
            Assert.Equal(0, touches, 0.01);
        }, iter: 100);

    [Fact]
    public void What_goes_through_a_door_turned_in_it_is_what_a_search_of_all_turns_finds() =>
        Gen.Select(Gen.Double[100, 2500], Gen.Double[20, 900], Gen.Double[600, 1200], Gen.Double[1800, 2200]).Holds((p, q, width, height) =>
        {
            var spare = double.NegativeInfinity;
            for (var i = 0; i <= 20_000; i++)
            {
                var (s, c) = (Angle.Sin(Math.PI / 2 * i / 20_000), Angle.Cos(Math.PI / 2 * i / 20_000));
                spare = Math.Max(spare, Math.Min(width - (p * c + q * s), height - (p * s + q * c)));
            }
            if (Math.Abs(spare) > 0.2) Assert.Equal(spare > 0, Passage.Through(p, q, width, height));
        }, iter: 300);

    [Fact]
    public void A_board_too_long_to_turn_level_is_tilted_under_a_high_ceiling()
    {
        var level = Passage.LongestLevel(32, 900, 850);
        Assert.True(Passage.Passes(Turn(900, 850), level - 1, 270, 32));
        Assert.True(Passage.Passes(Turn(900, 850), level + 200, 270, 32));
        Assert.False(Passage.Passes(Turn(900, 850, 271), level + 200, 270, 32));
    }

    [Fact]
    public void Tilting_is_judged_as_a_search_of_all_tilts_judges_it() =>
        Gen.Select(Gen.Double[1000, 5000], Gen.Double[60, 900], Gen.Double[20, 120], Gen.Double[700, 1300], Gen.Double[1900, 2600]).Holds((length, width, thick, passage, height) =>
        {
            var passes = false;
            var close = false;
            foreach (var (inPlan, upright) in new[] { (thick, width), (width, thick) })
            {
                var longest = Passage.LongestLevel(inPlan, passage, passage);
                for (var i = 0; i <= 9000; i++)
                {
                    var t = Math.PI / 2 * i / 9000;
                    var (plan, tall) = (length * Angle.Cos(t) + upright * Angle.Sin(t), length * Angle.Sin(t) + upright * Angle.Cos(t));
                    var spare = Math.Min(longest - plan, height - tall);
                    passes |= spare >= 0 && longest > 0;
                    close |= Math.Abs(spare) < 1;
                }
            }
            if (!close) Assert.Equal(passes, Passage.Passes(Turn(passage, passage, height), length, width, thick));
        }, iter: 150);

    [Fact]
    public void The_longest_of_a_section_passes_and_a_little_more_does_not()
    {
        var stop = Turn(910, 880, 2380);
        var longest = Passage.Longest(stop, 270, 32)!.Value;
        Assert.True(Passage.Passes(stop, longest, 270, 32));
        Assert.False(Passage.Passes(stop, longest + 0.01, 270, 32));
        Assert.Equal(0, Passage.Longest(Turn(500, 500, 800), 900, 600));
        Assert.Null(Passage.Longest(new() { Kind = WayInKind.Door, Width = 800, Height = 2000 }, 850, 300));
    }
}
