using System.Text.Json;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Commands;

public sealed class ProposeTests
{
    private static string Survey(string name) => Path.Combine(Samples.Folder, "surveys", name + ".stair.json");

    [Fact]
    public void The_sample_survey_is_answered_with_whole_jobs()
    {
        var (exit, text, error) = CommandLine.Run("propose", Survey("ferry-house"), "--json");
        Assert.Equal((0, ""), (exit, error));
        using var json = JsonDocument.Parse(text);
        var root = json.RootElement;
        Assert.Equal(["proposals", "rejected", "dropped", "candidatesJudged", "milliseconds"], root.EnumerateObject().Select(p => p.Name));
        Assert.True(root.GetProperty("candidatesJudged").GetInt64() > 1000);
        var proposals = root.GetProperty("proposals").EnumerateArray().ToList();
        Assert.True(proposals.Count >= 8);
        foreach (var proposal in proposals)
        {
            Assert.Equal(["family", "title", "hand", "measures", "score", "unbeaten", "job"], proposal.EnumerateObject().Select(p => p.Name));
            Assert.Equal(["comfort", "comfortOff", "pitchDegrees", "headroom", "floorArea", "narrowest", "timber", "taperedSteps"], proposal.GetProperty("measures").EnumerateObject().Select(p => p.Name));
            Assert.InRange(proposal.GetProperty("measures").GetProperty("pitchDegrees").GetDouble(), 25, 42.000001);
            Assert.NotNull(JobFile.Read(proposal.GetProperty("job").GetRawText()).Value);
        }
        Assert.Contains(proposals, p => p.GetProperty("unbeaten").GetBoolean());
        foreach (var family in root.GetProperty("rejected").EnumerateArray())
            Assert.All(new[] { "family", "decidedBy", "wouldHelp" }, name => Assert.NotEmpty(family.GetProperty(name).GetString()!));
    }

    [Fact]
    public void A_proposed_job_passes_every_other_command()
    {
        using var line = new CommandLine();
        var (_, text, _) = CommandLine.Run("propose", Survey("ferry-house"), "--json", "--top", "1");
        using var json = JsonDocument.Parse(text);
        var job = line.Write("chosen.stair.json", Assert.Single(json.RootElement.GetProperty("proposals").EnumerateArray()).GetProperty("job").GetRawText());
        Assert.Equal(0, CommandLine.Run("setout", job).Exit);
        Assert.Equal(0, CommandLine.Run("check", job).Exit);
        Assert.Equal(0, CommandLine.Run("prove", job).Exit);
    }

    [Fact]
    public void The_table_has_a_row_and_the_folder_a_plan_for_each()
    {
        using var line = new CommandLine();
        var (exit, text, _) = CommandLine.Run("propose", Survey("ferry-house"), "--top", "3", "--svg", line.PathOf("plans"));
        Assert.Equal(0, exit);
        var plans = Directory.GetFiles(line.PathOf("plans")).Select(Path.GetFileName).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(3, plans.Count);
        Assert.All(plans, (p, i) => Assert.StartsWith($"0{i + 1}-", p, StringComparison.Ordinal));
        Assert.All(plans, p => Assert.StartsWith("<svg", File.ReadAllText(Path.Combine(line.PathOf("plans"), p!)).TrimStart(), StringComparison.Ordinal));
        Assert.Contains("2R+G", text, StringComparison.Ordinal);
        Assert.Contains("stairs judged", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_impossible_survey_is_explained_family_by_family()
    {
        var (exit, text, _) = CommandLine.Run("propose", Survey("lamp-room"));
        Assert.Equal(1, exit);
        Assert.Contains("No layout fits.", text, StringComparison.Ordinal);
        Assert.Equal(Stairs.Proposals.FamilyCatalogue.All.Length, text.Split("Decided by").Length - 1);
        Assert.Contains("more well", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bad_survey_is_refused_with_everything_that_is_wrong()
    {
        using var line = new CommandLine();
        var path = line.Write("bad.stair.json", """{ "rodwright": 1, "title": "", "survey": { "floorToFloor": -3 } }""");
        var (exit, text, error) = CommandLine.Run("propose", path);
        Assert.Equal((1, ""), (exit, text));
        Assert.All(new[] { "title", "regulation", "survey.floorToFloor", "3 errors" }, word => Assert.Contains(word, error, StringComparison.Ordinal));
    }

    private const string Own = """
        { "rodwrightRegulation": 1, "id": "own-heron", "title": "Heron Mill, our stairs", "basedOn": "england-2013-private",
          "clauses": [ { "rule": "going", "clause": "house rule 1", "least": 250, "source": "what our customers like to walk" } ] }
        """;

    private static string SurveyUnderOwn(CommandLine line) =>
        line.Write("survey.stair.json", File.ReadAllText(Survey("ferry-house")).Replace("england-2013-private", "own-heron", StringComparison.Ordinal).Replace("\"comfort\": 625", "\"comfort\": 600", StringComparison.Ordinal));

    private static List<double> Goings(string json)
    {
        using var read = JsonDocument.Parse(json);
        return [.. read.RootElement.GetProperty("proposals").EnumerateArray().Select(p => p.GetProperty("job").GetProperty("going").GetDouble())];
    }

    [Fact]
    public void The_shops_own_table_changes_what_is_proposed()
    {
        using var line = new CommandLine();
        Directory.CreateDirectory(line.PathOf("tables"));
        line.Write("tables/heron.regulation.json", Own);
        var survey = SurveyUnderOwn(line);
        var published = line.Write("published.stair.json", File.ReadAllText(survey).Replace("own-heron", "england-2013-private", StringComparison.Ordinal));
        Assert.Contains(Goings(CommandLine.Run("propose", published, "--json").Out), g => g < 250);
        var (exit, text, error) = CommandLine.Run("propose", survey, "--json", "--regulations", line.PathOf("tables"));
        Assert.Equal((Exit.Done, ""), (exit, error));
        Assert.NotEmpty(Goings(text));
        Assert.All(Goings(text), g => Assert.True(g >= 250));
        var table = CommandLine.Run("propose", survey, "--top", "1", "--regulations", line.PathOf("tables"));
        Assert.Contains("Heron Mill, our stairs (the shop's own table)", table.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bad_table_of_the_shops_is_refused_with_all_its_faults_and_nothing_is_proposed()
    {
        using var line = new CommandLine();
        Directory.CreateDirectory(line.PathOf("regulations"));
        line.Write("regulations/heron.regulation.json", """
            { "rodwrightRegulation": 1, "id": "heron", "title": "Heron Mill, our stairs", "basedOn": "england-2013-private",
              "clauses": [ { "rule": "going", "number": "house rule 1", "replaces": "1.4", "least": 250, "most": 240 } ] }
            """);
        var (exit, text, error) = CommandLine.Run("propose", SurveyUnderOwn(line));
        Assert.Equal((Exit.Errors, ""), (exit, text));
        Assert.All(new[] { "RW1201: id", "RW1007: clauses[0].number", "RW1008: clauses[0].clause", "RW1008: clauses[0].source", "RW1209: clauses[0].replaces", "RW1208: clauses[0].least", "6 errors" },
            fault => Assert.Contains(fault, error, StringComparison.Ordinal));
        Assert.Contains("did you mean clause, the number or name of the clause?", error, StringComparison.Ordinal);
        Assert.Contains("its clauses for that rule: 1.3, Table 1.1", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_under_a_name_that_is_passed_over_is_named()
    {
        using var line = new CommandLine();
        Directory.CreateDirectory(line.PathOf("regulations"));
        line.Write("regulations/heron.json", Own);
        var (exit, text, error) = CommandLine.Run("propose", SurveyUnderOwn(line));
        Assert.Equal((Exit.Errors, ""), (exit, text));
        Assert.Contains("heron.json: note RW6009", error, StringComparison.Ordinal);
        Assert.Contains("name it NAME.regulation.json", error, StringComparison.Ordinal);
        Assert.Contains("RW1027: regulation: the shop's own table own-heron is not here", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Wrong_usage_is_told_from_wrong_surveys() => Assert.Equal(2, CommandLine.Run("propose", Survey("ferry-house"), "--top", "0").Exit);
}
