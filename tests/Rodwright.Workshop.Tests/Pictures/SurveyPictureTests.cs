using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Tests.Pictures;

public sealed class SurveyPictureTests
{
    [Theory]
    [MemberData(nameof(Set.Samples), MemberType = typeof(Set))]
    public void All_lettering_lies_within_the_picture_and_no_two_words_overlap_before_and_after_every_reading(string name)
    {
        var room = Testing.Samples.Job("loft-under-slope").Survey;
        var job = Testing.Samples.Job(name);
        foreach (var survey in new[] { job.Survey, job.Survey with { Walls = [room.Walls[0]] }, job.Survey with { Walls = room.Walls, Well = room.Well }, room with { FloorToFloor = job.Survey.FloorToFloor } })
        {
            var stair = Set.Out(job with { Survey = survey });
            Clear(SurveyPicture.Of(new(stair), SurveyAsk.Nothing), $"{name} plan, {survey.Walls.Count} walls");
            Clear(SurveySection.Of(new(stair), new(stair), SurveyAsk.Nothing), $"{name} section, {survey.Walls.Count} walls");
        }
    }

    [Fact]
    public void Nor_does_anything_in_made_up_rooms() => Rooms.Jobs.Holds(job =>
    {
        if (Stair.SetOut(job).Value is not { } stair) return;
        Clear(SurveyPicture.Of(new(stair), SurveyAsk.Nothing), "plan");
        Clear(SurveySection.Of(new(stair), new(stair), SurveyAsk.Nothing), "section");
    }, iter: 100);

    [Fact]
    public void Every_reading_of_a_room_has_a_tape_that_is_as_long_as_what_it_read()
    {
        var stair = Set.Sample("loft-under-slope");
        var (room, cut) = (new RoomView(stair), new SectionView(stair));
        var read = 0;
        foreach (var path in Readings(stair.Job))
        {
            var tape = SurveyTapes.Level(room, path) ?? SurveyTapes.Upright(room, cut, path);
            Assert.True(tape is not null, path);
            if (path.EndsWith(".across", StringComparison.Ordinal) || !double.TryParse(JobEdits.Value(stair.Job, path).Split(',')[0], System.Globalization.CultureInfo.InvariantCulture, out var value) || value <= 0) continue;
            Assert.True(Math.Abs(tape.Value.From.DistanceTo(tape.Value.To) - value) < 12, $"{path}: {tape.Value.From.DistanceTo(tape.Value.To)} for {value}");
            read++;
        }
        Assert.True(read >= 12, $"{read}");
        // Marked out at 600 and 800 the tape lies across them as long as the angle makes it.
        var across = SurveyTapes.Level(room, "survey.walls[0].corner.across")!.Value;
        Assert.Equal(1001.5, across.From.DistanceTo(across.To), 6);
    }

    [Fact]
    public void The_tape_at_hand_points_from_the_beginning_of_the_wall_to_its_end()
    {
        var stair = Set.Sample("loft-under-slope");
        var room = new RoomView(stair);
        var picture = SurveyPicture.Of(room, new("survey.walls[0].length", []));
        var tape = picture.Marks.OfType<StrokeMark>().Single(m => m.Of == "tape").Path.Vertices;
        Assert.True((tape[^1].At - tape[0].At).Unit.Dot((room.Walls[0].To - room.Walls[0].From).Unit) > 0.9999);
        Assert.DoesNotContain(SurveyPicture.Of(room, SurveyAsk.Nothing).Marks, m => m.Of == "tape");
    }

    [Fact]
    public void Readings_that_disagree_are_ticked_where_they_were_read_in_plan_and_in_section()
    {
        var job = Testing.Samples.Job("loft-under-slope");
        var stair = Set.Out(job);
        var (room, cut) = (new RoomView(stair), new SectionView(stair));
        var wall = Refused("survey.walls[0].length", "3742, 3790");
        var plan = SurveyPicture.Of(room, new(null, [.. wall]));
        Assert.Equal("party wall  ✗ 3742, 3790: 48 apart", Assert.Single(plan.Marks.OfType<TextMark>(), t => t.Of == "disagrees").Text);
        var strokes = plan.Marks.OfType<StrokeMark>().Where(m => m.Of == "disagrees").ToList();
        Assert.Equal(3, strokes.Count);
        var apart = strokes[1].Path.Vertices[0].At.DistanceTo(strokes[2].Path.Vertices[0].At);
        Assert.Equal(48 * (strokes[0].Path.Vertices[0].At.DistanceTo(strokes[1].Bounds.Centre) / 3742), apart, 6);
        var height = SurveySection.Of(room, cut, new(null, [.. Refused("survey.floorToFloor", "2612, 2640")]));
        Assert.Contains(height.Marks.OfType<TextMark>(), t => t.Of == "disagrees" && t.Text.Contains("2612, 2640: 28 apart", StringComparison.Ordinal));
        var trimmer = SurveySection.Of(room, cut, new(null, [.. Refused("survey.well.trimmer", "232, 250")]));
        Assert.Contains(trimmer.Marks.OfType<TextMark>(), t => t is { Of: "disagrees", Text: "✗ 232, 250: 18 apart" });
        Clear(plan, "plan");
        Clear(trimmer, "trimmer");

        IEnumerable<RefusedReading> Refused(string path, string typed)
        {
            var edit = JobEdits.Set(job, path, typed);
            return RefusedReading.Of(edit, JobEdits.Apply(job, edit).Findings);
        }
    }

    [Fact]
    public void A_wall_refused_before_it_is_there_is_marked_where_it_would_stand()
    {
        var job = Testing.Samples.Job("loft-under-slope");
        var edit = SurveyEdits.Add(job, "survey.walls", true, "a wall", [("length", "1500, 1540")]);
        var refused = Assert.Single(RefusedReading.Of(edit, JobEdits.Apply(job, edit).Findings));
        Assert.Equal(("survey.walls[2].length", "✗ 1500, 1540: 40 apart"), (refused.Path, refused.Words(Units.Millimetres)));
        Assert.Contains(SurveyPicture.Of(new(Set.Out(job)), new(null, [refused])).Marks.OfType<TextMark>(), t => t.Of == "disagrees");
    }

    [Fact]
    public void The_section_marks_the_least_headroom_of_the_whole_width_with_its_measure()
    {
        var stair = Set.Sample("loft-under-slope");
        var least = HeadroomReport.Of(stair.Plan)!.Least!.Least;
        var view = new SectionView(stair);
        Assert.Equal(least, view.LeastAcross!.Value.High - view.LeastAcross.Value.Low, 9);
        Assert.True(view.Least!.Value.High - view.Least.Value.Low >= least - 1e-6);
        var words = SurveySection.Of(new(stair), view, SurveyAsk.Nothing).Marks.OfType<TextMark>().Single(t => t.Of == "least").Text;
        Assert.StartsWith($"least headroom {Number.Print(least, 0)}", words, StringComparison.Ordinal);
    }

    private static void Clear(Picture picture, string what)
    {
        var paper = new Box2(0, 0, picture.Width, picture.Height);
        var words = picture.Marks.OfType<TextMark>().ToList();
        Assert.NotEmpty(words);
        Assert.All(words, w => Assert.True(paper.Holds(Box2.Of(w.Corners), 0.01), $"{what}: {w.Text} {w.Bounds}"));
        for (var i = 0; i < words.Count; i++)
            for (var j = 0; j < i; j++)
                Assert.False(Box2.Of(words[i].Corners).Overlaps(Box2.Of(words[j].Corners)), $"{what}: {words[i].Text} lies on {words[j].Text}");
    }

    private static IEnumerable<string> Readings(Job job)
    {
        foreach (var thing in new[] { "survey.walls[0]", "survey.walls[1]", "survey.well", "survey.ceilings[0]" })
            foreach (var field in SurveyEdits.FieldsOf(thing).Where(f => f.Unit == "mm" && JobEdits.Value(job, f.Path).Length > 0 && !f.Path.Contains(".plumb.", StringComparison.Ordinal))) yield return field.Path;
        yield return "survey.floorToFloor";
        yield return "survey.walls[0].openings[0].at";
        yield return "survey.walls[0].openings[0].width";
    }
}
