using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Xunit;

namespace Rodwright.Stairs.Tests.Proposals;

public sealed class RankingTests
{
    private static readonly Measures Stair = new(618, 12, 40, 2100, 3, 60, 0.2, 3);

    [Fact]
    public void Each_measure_costs_what_its_weight_says() => Assert.Equal(
        // 3 x 12/60, 1 x 10/10, 0.5 x 200/300, 0.5 x 3/2, 0.5 x 40/100, 0.5 x 0.2/0.1, 0.1 x 3.
        0.6 + 1 + 1.0 / 3 + 0.75 + 0.2 + 1 + 0.3, new Ranking(new(), 630, 2000).Of(Stair), 9);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2.5)]
    public void A_weight_of_nothing_leaves_a_measure_out_and_a_larger_one_counts_more(double weight)
    {
        var none = new RankingWeights { Comfort = 0, Pitch = 0, Headroom = 0, FloorArea = 0, Narrowest = 0, Timber = 0, TaperedSteps = 0 };
        Assert.Equal(3 * weight / 2, new Ranking(none with { FloorArea = weight }, 630, 2000).Of(Stair), 9);
    }
}
