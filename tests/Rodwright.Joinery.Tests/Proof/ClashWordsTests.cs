using Rodwright.Geometry;
using Rodwright.Joinery.Proof;
using Xunit;

namespace Rodwright.Joinery.Tests.Proof;

/// <summary>What fills one place is told in the unit of the job.</summary>
public sealed class ClashWordsTests
{
    [Fact]
    public void An_area_is_told_in_square_millimetres_or_square_inches()
    {
        var clash = new Clash("tread-3", "newel-2", "in plan", 645.16, IsArea: true);
        Assert.Equal("in plan, 645.16 square mm", clash.Words(Units.Millimetres));
        Assert.Equal("in plan, 1 sq in", clash.Words(Units.Inches));
    }

    [Fact]
    public void Cuts_that_meet_are_told_as_a_length()
    {
        var clash = new Clash("newel-2: a", "newel-2: b", "cuts meet", 3.175, IsArea: false);
        Assert.Equal("cuts meet by 3.18 mm", clash.Words(Units.Millimetres));
        Assert.Equal("cuts meet by 1/8\"", clash.Words(Units.Inches));
    }
}
