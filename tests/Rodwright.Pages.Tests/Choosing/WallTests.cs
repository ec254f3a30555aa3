using Bunit;
using Microsoft.AspNetCore.Components;
using Rodwright.Geometry;
using Rodwright.Pages.Choosing;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Testing;
using Rodwright.Workshop.Choosing;

namespace Rodwright.Pages.Tests.Choosing;

public sealed class WallTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static readonly Brief Some = Briefs.Of(2603, 3319, 2405, 2641, 1910) with { Wishes = new() { Families = ["straight", "quarter-winders-middle", "quarter-winders-low", "half-landing"] } };

    [Fact]
    public void Every_proposal_hangs_with_its_plan_its_measures_and_a_name_for_those_who_hear_it()
    {
        using var page = Bench.Page();
        var part = Hang(page, Some);
        var wall = ProposalWall.Of(Some, RegulationShelf.Published);
        Assert.Equal(wall.Cards.Length, part.FindAll(".proposal").Count);
        Assert.Equal(wall.Cards.Count(c => c.Proposal.Unbeaten), part.FindAll(".unbeaten-mark").Count);
        Assert.All(part.FindAll(".proposal .drawing"), d => Assert.StartsWith("Plan of proposal", d.GetAttribute("aria-label"), StringComparison.Ordinal));
        Assert.All(part.FindAll(".proposal"), p => Assert.Equal(7, p.QuerySelectorAll(".measures dd").Length));
        Assert.All(part.FindAll(".take"), b => Assert.StartsWith(b.TextContent, b.GetAttribute("aria-label"), StringComparison.Ordinal));
        Assert.Equal(wall.Report.Rejected.Select(r => "✗ " + r.Family.Title), part.FindAll(".rejected h4").Select(h => h.TextContent));
        Assert.Contains("more width of well", part.Find(".rejected .helps").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_filtered_and_sorted_and_says_how_many_are_shown()
    {
        using var page = Bench.Page();
        var part = Hang(page, Some);
        var all = part.FindAll(".proposal").Count;
        part.Find("#wall-hand").Change("Right");
        Assert.All(part.FindAll(".take"), b => Assert.EndsWith("right hand", b.GetAttribute("aria-label"), StringComparison.Ordinal));
        Assert.StartsWith($"{part.FindAll(".proposal").Count} of {all} proposals", part.Find("#wall-state").TextContent, StringComparison.Ordinal);
        part.Find("#wall-straight").Change(true);
        part.Find("#wall-family").Change("half-landing");
        Assert.NotEmpty(part.FindAll(".proposal"));
        Assert.All(part.FindAll(".proposal h4"), h => Assert.Contains("dog-leg", h.TextContent, StringComparison.Ordinal));
        part.Find("#wall-family").Change("");
        part.Find("#wall-order").Change("Pitch");
        var pitches = part.FindAll(".measures > div:nth-child(2) dd").Select(d => d.TextContent).ToList();
        Assert.Equal(pitches.Order(StringComparer.Ordinal), pitches);
    }

    [Fact]
    public void What_is_taken_is_told_and_wishes_are_refused_with_a_reason()
    {
        using var page = Bench.Page();
        WallCard? taken = null;
        Wishes? wished = null;
        var part = Hang(page, Some, c => taken = c, w => wished = w);
        part.FindAll(".take")[1].Click();
        part.WaitForAssertion(() => Assert.Equal(2, taken?.Rank), Patience);
        part.Find("#wish-pitch").Change("101");
        Assert.Contains("101 is not between 0 and 100", part.Find(".wishes .refusal").TextContent, StringComparison.Ordinal);
        Assert.Null(wished);
        part.Find("#wish-pitch").Change("2,5");
        part.WaitForAssertion(() => Assert.Equal(2.5, wished?.Weights.Pitch), Patience);
        Assert.Empty(part.FindAll(".wishes .refusal"));
    }

    [Fact]
    public void A_job_in_inches_is_chosen_for_in_inches()
    {
        using var page = Bench.Page();
        Wishes? wished = null;
        var brief = Brief.Of(Samples.Job("feet-and-inches")) with { Wishes = Wishes.UsualIn(Units.Inches) with { Families = ["straight", "quarter-landing"], Hand = Hand.Left } };
        var part = Hang(page, brief, wish: w => wished = w);
        Assert.DoesNotMatch(@"\bmm\b|m²|m³|metre", part.Markup);
        Assert.All(part.FindAll(".measures > div:first-child dd"), d => Assert.Matches("\", .*\" off the ideal", d.TextContent));
        Assert.All(part.FindAll(".measures > div:nth-child(4) dd"), d => Assert.EndsWith("sq ft", d.TextContent, StringComparison.Ordinal));
        var ideal = part.Find("#wish-comfort-ideal");
        Assert.Equal(("24 3/4", "text"), (ideal.GetAttribute("value"), ideal.GetAttribute("inputmode")));
        ideal.Change("24 1/2");
        part.WaitForAssertion(() => Assert.Equal(24.5 * 25.4, wished?.Comfort), Patience);
        part.Find("#wish-comfort-ideal").Change("630 mm");
        Assert.Contains("is no number", part.Find(".wishes .refusal").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_meanwhile_is_the_one_that_is_shown()
    {
        using var page = Bench.Page();
        var part = Hang(page, Some);
        foreach (var family in new[] { "half-landing", "quarter-winders-middle", "straight" })
            part.Render(p => p.Add(w => w.Brief, Some with { Wishes = new() { Families = [family] } }));
        Assert.Contains("Looking again", part.Find("#wall-state").TextContent, StringComparison.Ordinal);
        part.WaitForAssertion(() => Assert.All(part.FindAll(".proposal h4"), h => Assert.EndsWith("straight flight", h.TextContent, StringComparison.Ordinal)), Patience);
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("progress")), Patience);
    }

    [Fact]
    public void A_table_that_is_not_here_is_told()
    {
        using var page = Bench.Page();
        var part = page.Render<WallPart>(p => p.Add(w => w.Brief, Some with { Regulation = "own-gone" }).Add(w => w.Tables, RegulationShelf.Published));
        part.WaitForAssertion(() => Assert.Contains("own-gone is not here", part.Find(".refusal").TextContent, StringComparison.Ordinal), Patience);
    }

    private static IRenderedComponent<WallPart> Hang(BunitContext page, Brief brief, Action<WallCard>? take = null, Action<Wishes>? wish = null)
    {
        var part = page.Render<WallPart>(p => p.Add(w => w.Brief, brief).Add(w => w.Tables, RegulationShelf.Published)
            .Add(w => w.OnTake, EventCallback.Factory.Create(new object(), take ?? (_ => { }))).Add(w => w.OnWishes, EventCallback.Factory.Create(new object(), wish ?? (_ => { }))));
        part.WaitForElement(".proposal", Patience);
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("progress")), Patience);
        return part;
    }
}
