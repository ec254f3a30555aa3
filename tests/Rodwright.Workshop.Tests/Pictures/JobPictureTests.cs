using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Testing;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Tests.Pictures;

public sealed class JobPictureTests
{
    [Fact]
    public void A_card_shows_every_riser_every_string_and_every_newel_within_its_edges_and_without_words() => Generated.Jobs.Holds(job =>
    {
        if (Stair.SetOut(job).Value is not { } stair) return;
        var card = JobPictures.Card(stair);
        Assert.Equal(320.0 / 200, card.Width / card.Height, 6);
        var room = new Box2(0, 0, card.Width, card.Height);
        Assert.All(card.Marks, m => Assert.True(room.Holds(m.Bounds, 0.01), $"{m.Layer} {m.Bounds}"));
        Assert.DoesNotContain(card.Marks, m => m is TextMark);
        var lines = card.Marks.OfType<StrokeMark>().ToList();
        Assert.Equal(stair.Plan.Risers, lines.Count(l => l is { Path: { Closed: false, Vertices.Length: 2 } } && l.Layer == Layer.Visible));
        Assert.Equal(stair.Plan.Strings.Length, lines.Count(l => l.Path.Closed && l.Layer == Layer.Visible));
        Assert.Equal(stair.Plan.Newels.Length, card.Marks.OfType<FillMark>().Count(f => f is { Tint: 1 } && f.Layer == Layer.Visible));
        // Nothing that carries meaning is thinner than a screen dot at 300 dots wide.
        Assert.All(lines, l => Assert.True(l.Pen.Width >= 96.0 / 300));
    }, iter: 100, threads: 1);

    [Theory]
    [MemberData(nameof(Set.Samples), MemberType = typeof(Set))]
    public void A_card_is_filled_one_way_or_the_other(string name)
    {
        var card = JobPictures.Card(Set.Sample(name));
        var drawn = Box2.Empty;
        foreach (var mark in card.Marks) drawn = drawn.With(mark.Bounds);
        Assert.True(drawn.Width > 0.85 * card.Width || drawn.Height > 0.85 * card.Height, $"{drawn}");
    }
}
