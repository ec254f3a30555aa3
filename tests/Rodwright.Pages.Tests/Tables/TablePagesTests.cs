using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using Rodwright.Pages.Shelf;
using Rodwright.Pages.Tables;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Testing;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Tables;

namespace Rodwright.Pages.Tests.Tables;

public sealed class TablePagesTests
{
    private readonly MemoryShelf shelf = new(TimeProvider.System);

    private static readonly OwnRegulation Heron = new()
    {
        Id = "own-heron", Title = "Heron Mill", BasedOn = "england-2013-private",
        Clauses = [new() { Rule = "going", Clause = "shop 1", Replaces = "1.3, Table 1.1", Least = 235, Most = 290, Source = "what our customers like to walk" }],
    };

    private Task<OwnTableSaved> Keep(OwnRegulation table, int basedOn = 0, string by = "Ada") => shelf.Tables.Save(OwnTableTexts.Draft(table, by), basedOn);

    [Fact]
    public async Task Every_table_is_listed_and_the_shops_own_first()
    {
        await Keep(Heron);
        await using var page = Bench.Page(shelf);
        var tables = page.Render<TablesPage>();
        var links = tables.FindAll(".table-list a").Select(a => a.GetAttribute("href")).ToList();
        Assert.Equal("/regulations/own-heron", links[0]);
        Assert.Equal(RegulationCatalogue.All.Select(t => "/regulations/" + t.Id), links.Skip(1));
        Assert.Contains("not checked against the document", tables.Markup);
    }

    [Fact]
    public async Task Two_or_three_tables_are_chosen_and_a_fourth_takes_the_place_of_the_first()
    {
        await using var page = Bench.Page(shelf);
        var tables = page.Render<TablesPage>();
        Assert.True(tables.Find("#compare").HasAttribute("disabled"));
        for (var i = 0; i < 4; i++) tables.FindAll(".table-list input")[i].Change(true);
        tables.Find("#compare").Click();
        var go = page.Services.GetRequiredService<NavigationManager>();
        Assert.EndsWith(CompareTablesPage.Address(RegulationCatalogue.All.Skip(1).Take(3).Select(t => t.Id)), go.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_published_table_is_read_clause_by_clause_and_cannot_be_changed()
    {
        await using var page = Bench.Page(shelf);
        foreach (var given in RegulationCatalogue.All)
        {
            var table = page.Render<TablePage>(p => p.Add(t => t.Id, given.Id));
            Assert.Equal(given.Clauses.Length, table.FindAll(".clause-list tbody tr").Count);
            Assert.Equal(given.Clauses.Count(c => c.Evidence == Evidence.Memory), table.FindAll(".clause-list td:nth-child(5)").Count(c => c.TextContent == "not checked against the document"));
            Assert.NotNull(table.Find("#make-own"));
            Assert.Empty(table.FindAll("#change, #remove"));
        }
    }

    [Fact]
    public async Task A_table_that_is_not_there_is_said_so()
    {
        await using var page = Bench.Page(shelf);
        Assert.Contains("There is no such table", page.Render<TablePage>(p => p.Add(t => t.Id, "own-nowhere")).Markup);
        Assert.Contains("There is no such table", page.Render<OwnTablePage>(p => p.Add(t => t.Id, "own-nowhere")).Markup);
    }

    [Fact]
    public async Task An_own_table_that_judges_a_job_cannot_be_removed_and_says_which()
    {
        await Keep(Heron);
        await shelf.Add(ShelfDrafts.Made(Samples.Job("left-kite-low") with { Title = "Larkmoor", Regulation = "own-heron" }, "made", "Ada"));
        await using var page = Bench.Page(shelf);
        var table = page.Render<TablePage>(p => p.Add(t => t.Id, "own-heron"));
        Assert.True(table.Find("#remove").HasAttribute("disabled"));
        Assert.Contains("Larkmoor", table.Find(".table-list").TextContent);
        Assert.Contains("235 to 290 mm", table.Find("tr.own").TextContent);
        Assert.StartsWith("One job is or was judged by it", page.Render<OwnTablePage>(p => p.Add(t => t.Id, "own-heron")).Find("#judged").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_that_judges_none_is_removed_after_asking()
    {
        await Keep(Heron);
        await using var page = Bench.Page(shelf);
        var table = page.Render<TablePage>(p => p.Add(t => t.Id, "own-heron"));
        table.Find("#remove").Click();
        Assert.NotNull(await shelf.Tables.Find("own-heron"));
        table.WaitForElement("#really").Click();
        Assert.Null(await shelf.Tables.Find("own-heron"));
    }

    [Fact]
    public async Task A_new_table_is_refused_with_all_its_faults_each_at_its_field_and_then_kept()
    {
        await using var page = Bench.Page(shelf);
        page.Services.GetRequiredService<NavigationManager>().NavigateTo("/regulations/new?after=england-2013-private");
        var form = page.Render<OwnTablePage>();
        form.FindAll("button").Single(b => b.GetAttribute("aria-label") == "Change it: the going of the straight steps, 1.3, Table 1.1").Click();
        var (least, most, source) = ("input[id$=-least]", "input[id$=-most]", "input[id$=-source]");
        Assert.Equal(("220", "300"), (form.Find(least).GetAttribute("value"), form.Find(most).GetAttribute("value")));
        form.Find(least).Change("400");
        form.Find("form").Submit();
        Assert.Equal(["t-title", "t-id"], form.FindAll(".own-head [aria-invalid]").Select(i => i.Id));
        Assert.Equal("true", form.Find(least).GetAttribute("aria-invalid"));
        Assert.Equal("true", form.Find(source).GetAttribute("aria-invalid"));
        Assert.Contains("4 things to put right", form.Markup);
        Assert.Empty(await shelf.Tables.All());

        form.Find("#t-title").Change("Heron Mill");
        Assert.Equal("own-heron-mill", form.Find("#t-id").GetAttribute("value"));
        form.Find(least).Change("235");
        form.Find(source).Change("what our customers like to walk");
        form.Find("form").Submit();
        var kept = OwnRegulationFile.Read((await shelf.Tables.Find("own-heron-mill"))!.Text).Value!;
        var clause = Assert.Single(kept.Clauses);
        Assert.Equal((235, 300, "1.3, Table 1.1", "limit", "own"), (clause.Least, clause.Most, clause.Replaces, clause.Weight, clause.Evidence));
    }

    [Fact]
    public async Task Every_published_table_can_be_made_the_shops_own_with_every_limit_changed_to_itself()
    {
        foreach (var given in RegulationCatalogue.All)
        {
            var form = TableForm.After(given) with { Id = "own-x", Title = "x" };
            // A number and a rule stand once in a table: where a document says two things under one number, the second is named apart.
            var seen = new HashSet<(string, string)>();
            foreach (var clause in given.Clauses.Where(c => !c.Limit.IsNone))
            {
                var replacing = ClauseForm.Replacing(clause, given.Units) with { Source = clause.Source };
                if (!seen.Add((replacing.Rule, replacing.Replaces))) continue;
                form = form with { Clauses = form.Clauses.Add(replacing) };
            }
            var read = form.Read();
            Assert.True(read.Value is not null, given.Id + ": " + string.Join("; ", read.Findings.Select(f => $"{f.Where} {f.Message}")));
            await Keep(read.Value, basedOn: (await shelf.Tables.Find("own-x"))?.Version ?? 0);
        }
    }

    [Fact]
    public async Task Who_keeps_a_table_that_somebody_else_has_changed_is_told_and_chooses()
    {
        await Keep(Heron);
        await using var page = Bench.Page(shelf);
        var form = page.Render<OwnTablePage>(p => p.Add(t => t.Id, "own-heron"));
        await Keep(Heron with { Title = "Ben's" }, 1, "Ben");
        form.Find("#t-title").Change("Ada's");
        form.Find("form").Submit();
        Assert.Contains("Ben has changed this table meanwhile", form.Markup);
        Assert.Equal("Ben's", (await shelf.Tables.Find("own-heron"))!.Title);
        form.FindAll("button").Single(b => b.TextContent == "Keep mine in its place").Click();
        Assert.Equal(("Ada's", 3), ((await shelf.Tables.Find("own-heron"))!.Title, (await shelf.Tables.Find("own-heron"))!.Version));
    }

    [Fact]
    public async Task A_file_is_brought_in_or_refused_with_all_its_faults()
    {
        await using var page = Bench.Page(shelf);
        var tables = page.Render<TablesPage>();
        tables.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("""{ "rodwrightRegulation": 1, "id": "heron", "title": "" }""", "x.regulation.json"));
        tables.WaitForAssertion(() => Assert.True(tables.FindAll(".refusals li").Count >= 3));
        Assert.Empty(await shelf.Tables.All());
        tables.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(OwnRegulationFile.Write(Heron), "x.regulation.json"));
        tables.WaitForAssertion(() => Assert.Contains("Heron Mill is kept", tables.Markup));
        tables.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(OwnRegulationFile.Write(Heron), "x.regulation.json"));
        tables.WaitForAssertion(() => Assert.Contains("a table own-heron is kept already", tables.Markup));
    }

    [Fact]
    public async Task A_new_job_may_be_judged_by_a_table_of_the_shops_own()
    {
        await Keep(Heron);
        await using var page = Bench.Page(shelf);
        Stairs.Jobs.Job? made = null;
        var blank = page.Render<BlankJob>(p => p.Add(b => b.OnMade, m => made = m.Job));
        blank.WaitForElement("option[value=own-heron]");
        blank.Find("#b-title").Change("A job");
        blank.Find("#b-regulation").Change("own-heron");
        blank.FindAll("input[name=kind]")[0].Change(true);
        blank.Find("form").Submit();
        Assert.Equal("own-heron", made!.Regulation);
        Assert.True(made.Going >= 235);
    }

    [Fact]
    public async Task A_document_in_inches_is_read_in_inches_with_millimetres_beside()
    {
        await using var page = Bench.Page(shelf);
        foreach (var id in new[] { "usa-irc-2021", "usa-irc-2024" })
        {
            var limits = page.Render<TablePage>(p => p.Add(t => t.Id, id)).FindAll(".clause-list tbody tr").Select(r => (What: r.QuerySelector("th")!.TextContent, Limit: r.QuerySelectorAll("td")[1].TextContent)).ToList();
            Assert.Contains(("The rise", "at most 7 3/4\" (196.85 mm)"), limits);
            Assert.Contains(limits, l => l.Limit == "3/4\" to 1 1/4\" (19.05 to 31.75 mm)");
            Assert.Contains(limits, l => l.Limit == "at least 6' 8\" (2032 mm)");
            Assert.DoesNotContain(limits, l => l.Limit.StartsWith("at most 1", StringComparison.Ordinal) && !l.Limit.Contains('"', StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task A_table_after_a_document_in_inches_is_typed_in_inches_or_millimetres()
    {
        await using var page = Bench.Page(shelf);
        page.Services.GetRequiredService<NavigationManager>().NavigateTo("/regulations/new?after=usa-irc-2021");
        var form = page.Render<OwnTablePage>();
        form.FindAll("button").Single(b => b.GetAttribute("aria-label") == "Change it: the rise, R311.7.5.1").Click();
        form.FindAll("button").Single(b => b.GetAttribute("aria-label") == "Change it: the going of the straight steps, R311.7.5.2").Click();
        var (most, least) = (form.FindAll("input[id$=-most]")[0], form.FindAll("input[id$=-least]")[1]);
        Assert.Equal(("7 3/4\"", "10\""), (most.GetAttribute("value"), least.GetAttribute("value")));
        form.Find("#t-title").Change("Heron Mill");
        form.FindAll("input[id$=-most]")[0].Change("7 1/2");
        form.FindAll("input[id$=-least]")[1].Change("260");
        foreach (var i in new[] { 0, 1 }) form.FindAll("input[id$=-source]")[i].Change("ours");
        form.Find("form").Submit();
        // Without a mark nobody knows which unit is meant.
        Assert.Contains("1 thing to put right", form.Markup);
        form.FindAll("input[id$=-most]")[0].Change("7 1/2\"");
        form.Find("form").Submit();
        var kept = OwnRegulationFile.Read((await shelf.Tables.Find("own-heron-mill"))!.Text).Value!;
        Assert.Equal((190.5, 260), (kept.Clauses[0].Most, kept.Clauses[1].Least));
        var own = page.Render<TablePage>(p => p.Add(t => t.Id, "own-heron-mill")).FindAll("tr.own td:nth-child(3)").Select(c => c.TextContent);
        Assert.Equal(["at most 7 1/2\" (190.5 mm)", "at least 260 mm (10 1/4\" light)"], own);
    }

    [Fact]
    public async Task How_a_table_measures_is_changed_on_its_page()
    {
        await Keep(Heron);
        await using var page = Bench.Page(shelf);
        var form = page.Render<OwnTablePage>(p => p.Add(t => t.Id, "own-heron"));
        Assert.Equal(("", "270"), (form.Find("#m-inset").GetAttribute("value") ?? "", form.Find("#m-inset").GetAttribute("placeholder")));
        Assert.Contains("as it is: chord", form.Find("#m-going").TextContent);
        form.Find("#m-inset").Change("off the wall");
        form.Find("form").Submit();
        Assert.Equal("true", form.Find("#m-inset").GetAttribute("aria-invalid"));
        Assert.Single(form.FindAll("#measures .refusal"));
        form.Find("#m-inset").Change("300");
        form.Find("#m-middle").Change("0");
        form.Find("#m-both").Change("false");
        form.Find("#m-going").Change("arc");
        form.Find("#m-narrow").Change("straight");
        form.Find("#m-atleast").Change("false");
        form.Find("form").Submit();
        var kept = OwnRegulationFile.Read((await shelf.Tables.Find("own-heron"))!.Text).Value!;
        Assert.Equal(new OwnMeasures { MiddleBelow = 0, Inset = 300, BothSides = false, Going = "arc", Narrow = "straight", TaperedAtLeastStraight = false }, kept.Measures);
        // Left alone again, it is as in the table it is based on.
        form = page.Render<OwnTablePage>(p => p.Add(t => t.Id, "own-heron"));
        Assert.Equal("300", form.Find("#m-inset").GetAttribute("value"));
        form.Find("#m-inset").Change("");
        form.Find("#m-going").Change("");
        form.Find("form").Submit();
        kept = OwnRegulationFile.Read((await shelf.Tables.Find("own-heron"))!.Text).Value!;
        Assert.Equal((null, "", false), (kept.Measures.Inset, kept.Measures.Going, kept.Measures.BothSides));
    }

    [Fact]
    public async Task Tables_are_compared_rule_by_rule_with_the_difference_in_words()
    {
        await using var page = Bench.Page(shelf);
        page.Services.GetRequiredService<NavigationManager>().NavigateTo(CompareTablesPage.Address(["england-2013-private", "usa-irc-2021"]));
        var compared = page.Render<CompareTablesPage>();
        var rows = compared.FindAll(".compared-tables tbody tr").ToDictionary(r => r.QuerySelector("th")!.TextContent, r => r.QuerySelectorAll("td").Select(c => c.TextContent.Trim()).ToList());
        Assert.Equal("≠ different", rows["The rise"][0]);
        Assert.Contains("150 to 220 mm", rows["The rise"][1]);
        Assert.Contains("at most 7 3/4\" (196.85 mm)", rows["The rise"][2]);
        Assert.Equal("12\" (304.8 mm) from the inner side", rows["Where goings of tapered steps are measured"][2]);
        Assert.Equal("says nothing", rows["The pitch"][2]);
        Assert.Equal("the same", rows["Going of a tapered step"][0]);
        compared.Find("#differences").Change(true);
        Assert.DoesNotContain("the same", compared.FindAll(".compared-tables tbody td:nth-child(2)").Select(c => c.TextContent));
    }
}
