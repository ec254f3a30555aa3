using Rodwright.Drawings.Marks;
using Rodwright.Joinery;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Rodwright.Workshop.Timber;

namespace Rodwright.Workshop.Tests.Timber;

public sealed class TimberBenchTests
{
    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("balustrade")]
    [InlineData("feet-and-inches")]
    public void Every_cut_is_an_area_to_press_of_its_own_length_at_one_scale_and_lies_on_its_picture(string sample)
    {
        var job = Samples.Job(sample);
        var bench = TimberBench.Of(Stair.SetOut(job).Value!, UsualShop.Of(job.Practice.Timber, job.Practice.RiserMaterial));
        var factors = new List<double>();
        foreach (var card in bench.Boards)
        {
            var cuts = card.Board.Strips.SelectMany(s => s.Cuts).ToList();
            var areas = card.Picture.Marks.OfType<FillMark>().Where(m => m.Layer == Layer.Hit).ToList();
            Assert.Equal(cuts.Select(c => c.Wood.Part), areas.Select(a => a.Of));
            factors.AddRange(cuts.Zip(areas, (c, a) => a.Bounds.Width / c.Wood.SawnLength));
            Assert.All(card.Picture.Marks, m => Assert.True(m.Bounds.MinX >= -0.01 && m.Bounds.MinY >= -0.01 && m.Bounds.MaxX <= card.Picture.Width + 0.01 && m.Bounds.MaxY <= card.Picture.Height + 0.01, card.Title));
        }
        Assert.All(factors, f => Assert.Equal(factors[0], f, 1e-9));
        Assert.Equal(bench.Plan.Boards, bench.Boards.Select(b => b.Board));
    }

    [Fact]
    public void What_was_stopped_is_not_planned()
    {
        var job = Samples.Job("left-kite-low");
        Assert.ThrowsAny<OperationCanceledException>(() => TimberBench.Of(Stair.SetOut(job).Value!, UsualShop.Of(job.Practice.Timber, job.Practice.RiserMaterial), new CancellationToken(canceled: true)));
    }
}
