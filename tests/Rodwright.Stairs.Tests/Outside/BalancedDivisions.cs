using Rodwright.Stairs.Turns;
using Xunit;

namespace Rodwright.Stairs.Tests.Outside;

/// <summary>
/// The ways of sharing a narrow line out, against the check values of trade-practice.md 12 (worked out there from the published constructions; no table of widths is
/// printed in any of the sources) and against what defines each construction.
/// </summary>
public sealed class BalancedDivisions
{
    public static TheoryData<string, InnerDivision, double, double, double, double[]> Widths { get; } = new()
    {
        { "M2, u = 28", new Progression(), 240, 5, 780, [212, 184, 156, 128, 100] },
        { "M2, u = 30", new Progression(), 240, 5, 750, [210, 180, 150, 120, 90] },
        { "M2, four steps and a half, u = 35.28", new Progression(), 280, 4.5, 819, [244.72, 209.44, 174.16, 138.88] },
        { "M3, fixed end 90", new BalancingScale(), 240, 5, 780, [222, 189, 156, 123, 90] },
        { "M4", new Harrow(), 240, 5, 780, [231.04, 181.44, 146.26, 120.41, 100.86] },
        { "M4, four steps and a half", new Harrow(), 280, 4.5, 819, [265.99, 204.02, 161.45, 130.94] },
        { "M5, 20 degrees", new AngleProjection(), 240, 5, 780, [207.07, 175.74, 151.02, 131.17, 115.00] },
        { "M1", new EqualDivision(), 240, 5, 780, [156, 156, 156, 156, 156] },
    };

    [Theory, MemberData(nameof(Widths))]
    public void Widths_of_trade_practice_12(string what, InnerDivision division, double going, double steps, double inner, double[] widths)
    {
        Assert.NotEmpty(what);
        Assert.Equal(widths, division.Share(Side(going, steps, inner, 90)).Zip(division.Share(Side(going, steps, inner, 90)).Skip(1), (a, b) => b - a), (a, b) => Math.Abs(a - b) < 0.006);
    }

    [Fact]
    public void Storck_figs_344_to_346_the_middle_of_five_ordinates_is_a_fifth_of_the_length_and_the_borrowed_step_the_end()
    {
        // Steps 2 to 5 and the borrowed step 6, whose width the plan fixes.
        var places = new BalancingScale().Share(Side(280, 5, 900, 110));
        Assert.Equal(900.0 / 5, places[3] - places[2], 9);
        Assert.Equal(110, places[5] - places[4], 9);
        Assert.Equal(900, places[5], 9);
    }

    [Fact]
    public void Precheur_the_harrows_base_is_four_and_a_half_goings_of_28_cm_and_its_upright_the_inner_length()
    {
        const double S = 819;
        var side = Side(280, 4.5, S, 0);
        Assert.Equal(1260, side.Axis, 9);
        // The last ray, on the axis, cuts the whole upright.
        Assert.Equal(S, new Harrow().Share(side with { Stations = [0, side.Axis] })[1], 9);
    }

    [Theory, MemberData(nameof(Widths))]
    public void Every_division_falls_evenly_towards_the_turn(string what, InnerDivision division, double going, double steps, double inner, double[] widths)
    {
        Assert.NotEmpty(what);
        Assert.True(widths.Length > 3);
        var places = division.Share(Side(going, steps, inner, 90));
        var shared = places.Zip(places.Skip(1), (a, b) => b - a).ToList();
        Assert.All(shared.Zip(shared.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1e-9));
        Assert.All(shared, w => Assert.InRange(w, 1, going));
    }

    private static InnerDivision.TurnSide Side(double going, double steps, double inner, double narrow)
    {
        var whole = (int)Math.Floor(steps);
        return new([.. Enumerable.Range(0, whole + 1).Select(k => k * going)], steps * going, inner, whole, steps - whole, narrow);
    }
}
