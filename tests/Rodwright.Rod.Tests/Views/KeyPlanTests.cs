using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Rod.Tests.Sheets;
using Rodwright.Rod.Views;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Views;

public sealed class KeyPlanTests
{
    [Fact]
    public void Key_plans_fill_their_piece_and_stay_in_their_box()
    {
        var box = new Box2(30, 20, 70, 60);
        foreach (var name in Samples.Names)
        {
            var stair = Rods.Sample(name).Stair;
            foreach (var part in stair.Kit.Parts)
            {
                var marks = KeyPlan.Draw(stair, [part.Id], box);
                Assert.True(box.Holds(Mark.BoundsOf(marks), 1.5), $"{name}, {part.Id}");
                Assert.Contains(marks, m => m is FillMark { Tint: > 0.5 } && m.Of == part.Id);
            }
        }
    }
}
