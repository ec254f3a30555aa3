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

    [Fact]
    public void Wrong_usage_is_told_from_wrong_surveys() => Assert.Equal(2, CommandLine.Run("propose", Survey("ferry-house"), "--top", "0").Exit);
}
