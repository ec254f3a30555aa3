using System.Text.RegularExpressions;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Rodwright.Workshop.Choosing;
using Rodwright.Workshop.Edits;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Tests.Pictures;

/// <summary>Survey and proposals of a job in inches are drawn and told in feet and inches.</summary>
public sealed partial class InchPictureTests
{
    private static readonly Job Job = Samples.Job("feet-and-inches");
    private static readonly Job Measured = Job with
    {
        Survey = Job.Survey with
        {
            Walls = [new() { Name = "mill wall", Length = Readings.Of(168 * 25.4, 168.125 * 25.4) }, new() { Length = Readings.Of(100 * 25.4) }],
            LowerFinish = 0.75 * 25.4,
        },
    };

    private static IEnumerable<string> Words(Picture picture) => picture.Marks.OfType<TextMark>().Select(t => t.Text);

    [Fact]
    public void The_room_in_plan_is_lettered_in_feet_and_inches()
    {
        var stair = Stair.SetOut(Measured).Value!;
        var ask = new SurveyAsk("survey.well.length", [new("survey.walls[1].length", [100 * 25.4, 103 * 25.4])]);
        var words = Words(SurveyPicture.Of(new(stair), ask)).ToList();
        Assert.Contains(words, w => w.Contains("14' 0 1/16\" (1/8\" apart)", StringComparison.Ordinal));
        Assert.Contains(words, w => w.Contains("✗ 8' 4\", 8' 7\": 3\" apart", StringComparison.Ordinal));
        Assert.Contains("well 12' 0\" × 13' 6\"", words);
        NoBareFigures(words);
    }

    [Fact]
    public void The_section_is_lettered_in_feet_and_inches()
    {
        var stair = Stair.SetOut(Job with { Survey = Job.Survey with { LowerFinish = 0.75 * 25.4 } }).Value!;
        var words = Words(SurveySection.Of(new(stair), new(stair), SurveyAsk.Nothing)).ToList();
        Assert.Contains(words, w => w.Contains("8' 11 1/4\", finished 8' 10 1/2\"", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("least headroom ", StringComparison.Ordinal) && w.Contains('"', StringComparison.Ordinal));
        Assert.Contains("trimmer 11 1/2\"", words);
        NoBareFigures(words);
    }

    /// <summary>Every figure of more than two digits would be millimetres.</summary>
    private static void NoBareFigures(IEnumerable<string> words) => Assert.DoesNotContain(words, Bare().IsMatch);

    [GeneratedRegex(@"\d{3}|\bmm\b")]
    private static partial Regex Bare();

    [Fact]
    public void A_well_given_by_its_corners_has_them_on_sixteenths()
    {
        var ring = WellShape.Of(Measured.Survey.Well!, Stair.SetOut(Measured).Value!.Plan, RoomFrame.Of(Stair.SetOut(Measured).Value!.Plan));
        var job = JobEdits.Apply(Measured, SurveyEdits.WellByCorners(Measured.Units, ring.Select(c => c + new Vector2(0.3, 0.2)))).Value!;
        job = JobEdits.Apply(job, SurveyEdits.AddCorner(job)).Value!;
        Assert.Equal(5, job.Survey.Well!.Corners.Count);
        Assert.All(job.Survey.Well.Corners.SelectMany(c => new[] { c.X, c.Y }), v => Assert.DoesNotContain(".", Units.Inches.Typed(v), StringComparison.Ordinal));
    }

    [Fact]
    public void Proposals_and_wishes_are_told_in_inches_and_feet()
    {
        var wall = ProposalWall.Of(Brief.Of(Measured) with { Wishes = Wishes.UsualIn(Units.Inches) with { Families = ["straight", "quarter-landing"], Hand = Hand.Left } }, RegulationShelf.Published);
        Assert.NotEmpty(wall.Cards);
        foreach (var card in wall.Cards)
        {
            var told = $"{ProposalWords.Stair(card.Proposal)}; {ProposalWords.Layout(card.Proposal.Job)}; {ProposalWords.Taken(card.Proposal)}";
            Assert.DoesNotContain("mm", told, StringComparison.Ordinal);
            Assert.Matches(@"going \d+( \d+/8| \d/4| 1/2)?""", told);
        }
        foreach (var entry in WishForm.All)
        {
            Assert.DoesNotMatch(@"\bmm\b|metre", entry.Unit(Units.Inches));
            Assert.Equal("24 3/4", WishForm.Shown(WishForm.All[0], Wishes.UsualIn(Units.Inches), Units.Inches));
        }
        Assert.Equal(609.6, WishForm.Typed(new(), WishForm.All[0], "24", Units.Inches).Wishes!.Comfort);
        Assert.Contains("is not between", WishForm.Typed(new(), WishForm.All[0], "24'", Units.Inches).Refused, StringComparison.Ordinal);
    }

    [Fact]
    public void No_field_is_explained_in_millimetres_and_every_meaning_of_its_own_belongs_to_a_field()
    {
        foreach (var field in JobFields.Descriptions.Where(f => f.Path != "units"))
        {
            Assert.DoesNotMatch(@"\bmm\b|metre", field.SourceIn(Units.Inches));
            if (field.IsLength) Assert.DoesNotMatch(@"(?<![\d/' -])\d{2,}(?![\d/""' ])", field.SourceIn(Units.Inches));
            Assert.Equal(field.Source, field.SourceIn(Units.Millimetres));
        }
        Assert.Equal("1/16\" to 1/8\" is usual", JobFields.Descriptions.Single(f => f.Path == "bottomStep.veneer").SourceIn(Units.Inches).Split("; ")[1]);
        Assert.Equal(15, JobFields.Descriptions.Count(f => f.SourceIn(Units.Inches) != f.Source));
    }
}
