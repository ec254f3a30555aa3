using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Properties;
using Rodwright.Rod.Board;
using Rodwright.Rod.Things;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Board;

public sealed class BoardIdsTests
{
    public static TheoryData<string> All => Boards.Samples;

    [Theory, MemberData(nameof(All))]
    public void Everything_drawn_says_what_it_is(string sample) => AssertNamed(RodJobs.Stair(sample));

    [Fact]
    public void Everything_drawn_of_made_up_jobs_says_what_it_is() => Generated.Jobs.Holds(
        job =>
        {
            if (Stair.SetOut(job).Value is { } stair) AssertNamed(stair);
        }, iter: 60);

    [Theory, MemberData(nameof(All))]
    public void Every_cut_of_strings_and_newels_is_seen_on_its_piece_and_in_plan(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var board = Boards.Sample(sample);
        foreach (var part in stair.Kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString or PartKind.Newel))
            foreach (var cut in part.Cuts)
                Assert.True(Pieces(board, ThingId.Of(part, cut)) is var seen && seen.Contains("plan") && seen.Exists(id => board.Find(id)!.Things.Contains(part.Id)), ThingId.Of(part, cut));
    }

    [Fact]
    public void A_picked_mortice_lights_up_in_plan_on_its_newel_and_as_a_tenon_on_the_string()
    {
        var stair = RodJobs.Stair("left-kite-low");
        var board = Boards.Sample("left-kite-low");
        var joint = stair.Kit.Find("newel-turn").Cuts.Single(c => c.Id == "mortice-newel-string-1-lower").Joint;
        var with = stair.Kit.Parts.SelectMany(p => p.Cuts.Where(c => c.Joint == joint).Select(c => ThingId.Of(p, c)));
        var seen = with.SelectMany(id => Pieces(board, id)).Distinct().Order(StringComparer.Ordinal);
        Assert.Equal(["newel-string-1", "newel-turn", "plan"], seen);
    }

    [Theory, MemberData(nameof(All))]
    public void Treads_boards_newels_and_strings_are_areas_to_pick_that_lie_beneath(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var board = Boards.Sample(sample);
        var plan = board.Find("plan")!;
        var areas = plan.Marks.OfType<FillMark>().Where(f => f.Layer == Layer.Hit).Select(f => f.Of).ToList();
        foreach (var part in stair.Kit.Parts.Where(p => p.Kind is PartKind.Tread or PartKind.TaperedTread)) Assert.Contains(part.Id, areas);
        foreach (var piece in board.Pieces)
        {
            var hits = piece.Marks.Select((m, i) => (m, i)).Where(x => x.m.Layer == Layer.Hit).ToList();
            Assert.Equal(Enumerable.Range(0, hits.Count), hits.Select(h => h.i));
            if (piece.Kind != BoardPieceKind.Plan) Assert.All(piece.Things, t => Assert.Contains(hits, h => h.m.Of == t));
        }
    }

    private static List<string> Pieces(RodBoard board, string id) =>
        [.. board.Pieces.Where(p => FlatMarks.Of(p.Marks).Any(m => m.Mark.Of == id && m.Mark.Layer != Layer.Hit)).Select(p => p.Id)];

    private static void AssertNamed(Stair stair)
    {
        foreach (var piece in RodBoard.Of(stair).Pieces)
        {
            foreach (var (mark, _) in FlatMarks.Of(piece.Marks))
            {
                if (mark.Of is { } of) Assert.NotEmpty(of);
                else if (mark is StrokeMark) Assert.True(mark.Layer == Layer.Dimension || mark.Layer == Layer.Lettering, $"a line of {mark.Layer} on {piece.Id} says nothing");
                else Assert.True(mark is TextMark { Text: "up" or "up the stair" }, $"{mark} on {piece.Id} says nothing");
            }
            Assert.All(piece.Lines, l => Assert.NotEmpty(l.Line.Of));
        }
    }
}
