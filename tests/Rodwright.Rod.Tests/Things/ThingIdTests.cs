using Xunit;

using Rodwright.Rod.Things;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;

namespace Rodwright.Rod.Tests.Things;

public sealed class ThingIdTests
{
    [Fact]
    public void Every_part_and_every_cut_has_an_id_of_its_own_that_leads_back_to_its_part()
    {
        var stair = Joinery.Stair.SetOut(Samples.Job("left-kite-low")).Value!;
        var ids = new HashSet<string>();
        foreach (var part in stair.Kit.Parts)
        {
            Assert.True(ids.Add(ThingId.Of(part)), part.Id);
            foreach (var cut in part.Cuts)
            {
                Assert.True(ids.Add(ThingId.Of(part, cut)), cut.Id);
                Assert.Equal(part.Id, ThingId.PartOf(ThingId.Of(part, cut)));
            }
        }
        Assert.True(ids.Count > 100);
    }
}
