using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;
using Xunit;

namespace Rodwright.Workshop.Tests.Edits;

public class DragEditTests
{
    private static readonly Job Barn = Samples.Job("left-kite-low");

    private static Job After(Stair stair, string handle, double distance) => JobEdits.Apply(stair.Job, DragEdits.Edit(stair, handle, distance)!).Value!;

    [Fact]
    public void The_turn_is_dragged_along_the_lower_flight_by_whole_goings()
    {
        var stair = Set.Out(Barn);
        var handle = DragEdits.Handles(stair).Single(h => h.Id == "newel-turn");
        Assert.Equal(new Vector2(0, 1), handle.Along);
        Assert.Equal(225, handle.Step);
        Assert.Equal("3 steps, 3 tapered, 6 steps", SequenceWords.Of(After(stair, handle.Id, 180).Layout));
        Assert.Equal("0 steps, 3 tapered, 9 steps", SequenceWords.Of(After(stair, handle.Id, -5000).Layout));
        Assert.Null(DragEdits.Edit(stair, handle.Id, 100));
        // The newel ends within half a going of where the pointer let it go.
        Assert.Equal(handle.At.Y + 450, Set.Out(After(stair, handle.Id, 500)).Plan.Turn!.Centre.Y, 1e-6);
    }

    [Fact]
    public void The_first_riser_takes_the_going_with_it_in_whole_millimetres()
    {
        var stair = Set.Sample("straight-flight");
        var handle = Assert.Single(DragEdits.Handles(stair));
        Assert.Equal(("riser-1", new Vector2(0, -1), 12.0), (handle.Id, handle.Along, handle.Step));
        Assert.Equal(240, After(stair, handle.Id, 62).Going);
        Assert.Equal(234, After(stair, handle.Id, -10).Going);
        Assert.Null(DragEdits.Edit(stair, handle.Id, 5));
        Assert.Equal(236, JobEdits.Apply(stair.Job, DragEdits.Press(stair, handle.Id, true)!).Value!.Going);
    }

    [Fact]
    public void The_risers_of_the_turn_are_dragged_out_from_the_newel_and_over_its_arris_at_one_go()
    {
        var stair = Set.Out(Barn);
        Assert.Equal(30, stair.Plan.Turn!.FirstRiser);
        var job = After(stair, "riser-3", 4.4);
        Assert.Equal((34.0, null), (job.Layout.Turn!.FirstRiser, job.Layout.Turn.LastRiser));
        Assert.Equal(35, After(stair, "riser-3", 15).Layout.Turn!.FirstRiser);
        Assert.Equal(67, After(stair, "riser-3", 30).Layout.Turn!.FirstRiser);
        Assert.Equal(0, After(stair, "riser-6", -90).Layout.Turn!.LastRiser);
        var atArris = Set.Out(After(stair, "riser-6", 5));
        Assert.Equal(67, JobEdits.Apply(atArris.Job, DragEdits.Press(atArris, "riser-6", true)!).Value!.Layout.Turn!.LastRiser);
        Assert.Equal(34, JobEdits.Apply(atArris.Job, DragEdits.Press(atArris, "riser-6", false)!).Value!.Layout.Turn!.LastRiser);
        Assert.Null(DragEdits.Edit(stair, "riser-5", 50));
        Assert.Null(DragEdits.Edit(stair, "nothing", 50));
        Assert.Null(DragEdits.Edit(stair, "riser-3", double.NaN));
    }

    [Fact]
    public void On_a_right_hand_stair_the_last_riser_is_dragged_the_other_way()
    {
        var left = DragEdits.Handles(Set.Out(Barn)).Single(h => h.Id == "riser-6");
        var right = DragEdits.Handles(Set.Out(JobEdits.Apply(Barn, LayoutEdits.Mirror(Barn)).Value!)).Single(h => h.Id == "riser-6");
        Assert.Equal(new Vector2(-1, 0), left.Along);
        Assert.Equal(new Vector2(1, 0), right.Along);
        Assert.Equal(left.At.Mirrored, right.At);
        Assert.Equal(7, left.Distance(new(0, 0), new(-7, 30)));
    }

    [Fact]
    public void Every_drag_of_every_handle_gives_a_job_the_reader_takes() => Gen.Select(Gen.OneOf(Generated.Jobs, Generated.Courses), Gen.Double[-800, 800]).Holds((job, distance) =>
    {
        if (Stair.SetOut(job).Value is not { } stair) return;
        var handles = DragEdits.Handles(stair);
        Assert.NotEmpty(handles);
        Assert.Equal(handles.Length, handles.Select(h => h.Id).Distinct().Count());
        foreach (var handle in handles)
        {
            Assert.Equal(1, handle.Along.Length, 1e-9);
            if (DragEdits.Edit(stair, handle.Id, distance) is not { } edit) continue;
            var outcome = JobEdits.Apply(job, edit);
            // Only a going can be dragged to what no stair has: the wedges no longer fit, say.
            if (handle.Changes == "going") continue;
            Assert.NotNull(outcome.Value);
            Assert.NotEqual(job, outcome.Value);
            Assert.Equal(job.Layout.Risers, outcome.Value.Layout.Risers);
            Assert.NotEmpty(edit.Words);
        }
    }, iter: 200);
}
