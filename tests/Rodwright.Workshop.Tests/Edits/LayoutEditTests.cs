using CsCheck;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;
using Xunit;

namespace Rodwright.Workshop.Tests.Edits;

public class LayoutEditTests
{
    private static Job Barn => Samples.Job("left-kite-low");

    /// <summary>As many steps to a lower floor, so that few risers can still be climbed.</summary>
    private static Job Low => Barn with { Survey = new() { FloorToFloor = [1450] } };

    private static string After(Job job, JobEdit? edit) => SequenceWords.Of(JobEdits.Apply(job, edit!).Value!.Layout);

    [Fact]
    public void Steps_are_moved_added_and_taken_away()
    {
        Assert.Equal("3 steps, 3 tapered, 6 steps", After(Barn, LayoutEdits.MoveTurn(Barn, 1)));
        Assert.Equal("0 steps, 3 tapered, 9 steps", After(Barn, LayoutEdits.MoveTurn(Barn, -2)));
        Assert.Equal("3 steps, 3 tapered, 7 steps", After(Barn, LayoutEdits.AddStep(Barn, beforeTurn: true)));
        Assert.Equal("2 steps, 3 tapered, 8 steps", After(Barn, LayoutEdits.AddStep(Barn, beforeTurn: false)));
        Assert.Equal("1 step, 3 tapered, 7 steps", After(Barn, LayoutEdits.RemoveStep(Barn, beforeTurn: true)));
        Assert.Equal("2 steps, 3 tapered, 6 steps", After(Barn, LayoutEdits.RemoveStep(Barn, beforeTurn: false)));
        Assert.Equal("2 steps, 2 tapered, 8 steps", After(Barn, LayoutEdits.TaperedSteps(Barn, 2)));
        Assert.Equal("2 steps, 4 tapered, 6 steps", After(Barn, LayoutEdits.TaperedSteps(Barn, 4)));
        Assert.Equal("2 steps, quarter landing, 9 steps", After(Barn, LayoutEdits.Landing(Barn)));
        Assert.Equal("12 steps", After(Barn, LayoutEdits.RemoveTurn(Barn)));
        Assert.Equal("2 steps, 3 tapered, 10 steps", After(Barn, LayoutEdits.Risers(Barn, 16)));
        Assert.Equal("1 step, 3 tapered, 0 steps", After(Low, LayoutEdits.Risers(Low, 5)));
        var landing = Samples.Job("quarter-landing");
        Assert.Equal("5 steps, 3 tapered, 6 steps", After(landing, LayoutEdits.TaperedSteps(landing, 3)));
        var straight = Samples.Job("straight-flight");
        Assert.Equal("3 steps, 3 tapered, 6 steps", After(straight, LayoutEdits.AddTurn(straight, 3)));
        Assert.Equal("13 steps", After(straight, LayoutEdits.AddStep(straight, beforeTurn: false)));
    }

    [Fact]
    public void Where_there_is_nothing_to_change_there_is_no_edit()
    {
        var straight = Samples.Job("straight-flight");
        Assert.Null(LayoutEdits.MoveTurn(Barn, -3));
        Assert.Null(LayoutEdits.MoveTurn(Barn, 0));
        Assert.Null(LayoutEdits.MoveTurn(straight, 1));
        Assert.Null(LayoutEdits.TaperedSteps(Barn, 3));
        Assert.Null(LayoutEdits.Landing(Samples.Job("quarter-landing")));
        Assert.Null(LayoutEdits.RemoveTurn(straight));
        Assert.Null(LayoutEdits.AddTurn(Barn, 2));
        Assert.Null(LayoutEdits.AddTurn(straight, 10));
        Assert.Null(LayoutEdits.Risers(Barn, 13));
        Assert.Null(LayoutEdits.Risers(Barn, 3));
    }

    [Fact]
    public void Any_turn_of_several_is_moved_taken_out_and_put_in_and_any_flight_lengthened()
    {
        var well = Samples.Job("open-well");
        Assert.Equal("4 steps, quarter landing, 4 steps, quarter landing, 4 steps", After(well, LayoutEdits.MoveTurn(well, 1, turn: 1)));
        Assert.Equal("4 steps, quarter landing, 2 steps, quarter landing, 5 steps", After(well, LayoutEdits.Lengthen(well, 1, -1)));
        Assert.Equal("4 steps, quarter landing, 9 steps", After(well, LayoutEdits.RemoveTurn(well, 1)));
        Assert.Equal("8 steps, quarter landing, 5 steps", After(well, LayoutEdits.RemoveTurn(well, 0)));
        Assert.Equal("4 steps, quarter landing, 3 steps, quarter landing, 1 step, 3 tapered, 1 step", After(well, LayoutEdits.AddTurn(well, 1, flight: 2)));
        Assert.Equal("4 steps, quarter landing, 3 steps, 3 tapered, 3 steps", After(well, LayoutEdits.TaperedSteps(well, 3, turn: 1)));
        var barn = JobEdits.Apply(Barn, LayoutEdits.AddTurn(Barn, 2, flight: 1)!).Value!;
        Assert.Equal("2 steps, 3 tapered, 2 steps, 3 tapered, 2 steps", SequenceWords.Of(barn.Layout));
        Assert.Equal("the second turn 1 step down", LayoutEdits.MoveTurn(barn, -1, 1)!.Words);
        Assert.Null(LayoutEdits.MoveTurn(barn, 3, 1));
        Assert.Null(LayoutEdits.Lengthen(barn, 3, 1));
        Assert.Null(LayoutEdits.AddTurn(barn, 0, flight: 1));
    }

    [Fact]
    public void A_turn_is_given_its_own_hand_its_kind_and_its_way_of_setting_out()
    {
        Assert.Equal("2 steps, 3 tapered (to the right), 7 steps", After(Barn, TurnEdits.To(Barn, 0, Hand.Right)));
        Assert.Null(TurnEdits.To(Barn, 0, Hand.Left));
        Assert.Equal("2 steps, half landing, 9 steps", After(Barn, TurnEdits.Made(Barn, 0, TurnKind.Landing, 2)));
        Assert.Equal("2 steps, 6 tapered in a half turn, 4 steps", After(Barn, TurnEdits.Made(Barn, 0, TurnKind.Winders, 2)));
        Assert.Null(TurnEdits.Made(Barn, 0, TurnKind.Winders, 1));
        var balanced = JobEdits.Apply(Barn, TurnEdits.Method(Barn, 0, "balanced-harrow")!).Value!;
        Assert.Equal("2 steps, 3 tapered (balanced-harrow; 2 shared before; 2 shared after), 7 steps", SequenceWords.Of(balanced.Layout));
        Assert.Equal("2 steps, 3 tapered (balanced-harrow; 2 shared before; 5 shared after), 7 steps", After(balanced, TurnEdits.Shared(balanced, 0, after: true, 5)));
        Assert.Null(TurnEdits.Shared(balanced, 0, after: false, 3));
        Assert.Null(TurnEdits.Shared(Barn, 0, after: false, 1));
        Assert.Equal("2 steps, 3 tapered, 7 steps", After(balanced, TurnEdits.Method(balanced, 0, "equal-goings")));
        var kites = Samples.Job("double-kite");
        Assert.Empty(JobEdits.Apply(kites, TurnEdits.Typed(kites, 0, "well", "20")).Findings.Where(f => f.Severity == Stairs.Findings.Severity.Error).Select(f => f.ToString()));
        Assert.Equal("3 steps, 6 tapered in a half turn (well 20), 4 steps", After(kites, TurnEdits.Typed(kites, 0, "well", "20")));
        Assert.Equal("2 steps (right open), 3 tapered, 7 steps", After(Barn, TurnEdits.Side(Barn, 0, Hand.Right, SideKind.Open)));
    }

    [Fact]
    public void A_mirror_image_turns_every_turn_of_its_own_hand_too()
    {
        var job = Samples.Job("left-then-right");
        var mirrored = JobEdits.Apply(job, LayoutEdits.Mirror(job)).Value!;
        Assert.Equal([Hand.Right, Hand.Left], Course.Of(mirrored.Layout).Turns.Select(mirrored.Layout.HandOf));
        Assert.Equal(job, JobEdits.Apply(mirrored, LayoutEdits.Mirror(mirrored)).Value);
    }

    [Fact]
    public void The_outer_side_of_a_turn_that_is_added_is_walled()
    {
        var open = Samples.Job("straight-flight") with { Sides = new(SideKind.Open, SideKind.Open) };
        var turned = JobEdits.Apply(open, LayoutEdits.AddTurn(open, 4)!).Value!;
        Assert.Equal(new Sides(SideKind.Open, SideKind.Wall), turned.Sides);
    }

    [Fact]
    public void Edits_of_steps_keep_the_number_of_risers_and_can_be_done_backwards() => Gen.OneOf(Generated.Jobs, Generated.Courses).Holds(job =>
    {
        foreach (var edit in new[] { LayoutEdits.MoveTurn(job, 1), LayoutEdits.TaperedSteps(job, 2), LayoutEdits.TaperedSteps(job, 4), LayoutEdits.Landing(job), LayoutEdits.RemoveTurn(job), LayoutEdits.AddTurn(job, 1), LayoutEdits.Mirror(job) })
            if (edit is not null) Assert.Equal(job.Layout.Risers, JobEdits.Apply(job, edit).Value!.Layout.Risers);
        if (LayoutEdits.MoveTurn(job, 1) is { } up)
        {
            var moved = JobEdits.Apply(job, up).Value!;
            // Two turns of tapered steps that meet become one half turn.
            if (Course.Of(moved.Layout).Turns.Length == Course.Of(job.Layout).Turns.Length) Assert.Equal(job, JobEdits.Apply(moved, LayoutEdits.MoveTurn(moved, -1)!).Value);
        }
        var mirrored = JobEdits.Apply(job, LayoutEdits.Mirror(job)).Value!;
        Assert.NotEqual(job.Layout.Hand, mirrored.Layout.Hand);
        Assert.Equal((job.InnerSide, job.OuterSide), (mirrored.InnerSide, mirrored.OuterSide));
        Assert.Equal(job, JobEdits.Apply(mirrored, LayoutEdits.Mirror(mirrored)).Value);
        // A low stair may have no room for its wedges with a riser more.
        if (JobEdits.Apply(job, LayoutEdits.Risers(job, job.Layout.Risers + 1)!).Value is { } more) Assert.Equal(job.Layout.Risers + 1, more.Layout.Risers);
    }, iter: 200);

    [Theory]
    [MemberData(nameof(Set.Samples), MemberType = typeof(Set))]
    public void A_model_at_half_scale_is_judged_as_the_stair_is(string sample)
    {
        var job = Samples.Job(sample);
        var scale = job.ModelScale == 1 ? 0.5 : 1;
        var model = JobEdits.Apply(job, ScaleEdit.To(job, scale)!).Value!;
        Assert.Equal(job.Rise * scale / job.ModelScale, model.Rise, 0.01);
        Assert.Equal(job.Practice.TreadWedge.Length * scale / job.ModelScale, model.Practice.TreadWedge.Length);
        Assert.Equal(job.Practice.TreadWedge.Taper, model.Practice.TreadWedge.Taper);
        Assert.Equal(Set.Out(job).Regulation.Checks.Select(c => c.Outcome), Set.Out(model).Regulation.Checks.Select(c => c.Outcome));
        Assert.Equal(job, JobEdits.Apply(model, ScaleEdit.To(model, job.ModelScale)!).Value);
        Assert.Null(ScaleEdit.To(job, job.ModelScale));
    }
}
