using Rodwright.Joinery.Proposals;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Proposals;

/// <summary>Stairs of the old handbooks, found again from what is printed of the place they were made for.</summary>
public sealed class PublishedLayoutTests
{
    private const double Inch = 25.4;

    /// <summary>
    /// Notes on Building Construction (Rivington series), "Laying out dog-legged stair", fig. 201: 10 ft 10 in high, 11 ft long with a landing of 3 ft 6 in; printed: 20 risers of
    /// 6 1/2 in, two flights of 10, treads of 10 in (standards.md 11, 13).
    /// </summary>
    [Fact]
    public void The_dog_legged_stair_with_a_half_space_landing()
    {
        // The landing is 3 ft 6 in from the newel's centre to the wall; the last riser's own thickness, 12, lies beyond the length over riser faces.
        var brief = Of((10 * 12 + 10) * Inch, 11 * 12 * Inch + 12, 584, 1064.5, 100, "half-landing");
        var found = StairProposals.Propose(brief).Proposals.First(p => p.Job.Layout.Risers == 20).Job;
        Assert.Equal(6.5 * Inch, found.Rise, 6);
        Assert.Equal(254, found.Going);
        Assert.Equal([9, 1, 9], found.Layout.Sequence.Select(i => i.Steps));
    }

    /// <summary>
    /// The same, fig. 204, winders at a half turn: 11 ft 1 in high, 8 ft long with 3 ft 6 in for the winders; printed: 19 steps of 7 in, 6 treads of 9 in in each flight
    /// (standards.md 11, 14). Our goings are whole millimetres: 229 for 9 in.
    /// </summary>
    [Fact]
    public void The_half_turn_of_winders()
    {
        var brief = Of((11 * 12 + 1) * Inch, 8 * 12 * Inch + 1, 14 * Inch + 9 * Inch, 1050, 140, "half-winders");
        var found = StairProposals.Propose(brief).Proposals.First(p => p.Job.Layout.Risers == 19).Job;
        Assert.Equal(7 * Inch, found.Rise, 6);
        Assert.InRange(found.Going, 228, 229);
        Assert.Equal([6, 6, 6], found.Layout.Sequence.Select(i => i.Steps));
    }

    private static Brief Of(double height, double along, double comfort, double width, double newel, string family) => new()
    {
        Title = "Published", Regulation = "england-2013-private",
        Survey = new() { FloorToFloor = [height], Walls = [new WallRun { Length = Readings.Of(along) }, new WallRun { Length = Readings.Of(2400) }] },
        Wishes = new()
        {
            Comfort = comfort, Widths = [width], Newels = [newel], Families = [family], Hand = Hand.Left,
            Weights = new() { Comfort = 5, Pitch = 0, Headroom = 0, FloorArea = 0, Narrowest = 0, Timber = 0, TaperedSteps = 0 },
        },
    };
}
