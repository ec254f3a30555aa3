using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

/// <summary>Jobs made ready for sheets.</summary>
internal static class Rods
{
    public static RodJob Sample(string name, string paper = "A3", string? scale = null) => Of(Samples.Job(name), paper, scale);

    public static RodJob Of(Job job, string paper = "A3", string? scale = null)
    {
        var stair = Stair.SetOut(job).Value!;
        Assert.True(PaperStock.TryParse(paper, out var stock, out var why), why);
        Scale? wanted = null;
        if (scale is not null)
        {
            Assert.True(Scale.TryParse(scale, out var read, out why), why);
            wanted = read;
        }
        return new(stair, stair.Prove(), new(stock, wanted, "4 March"));
    }
}
