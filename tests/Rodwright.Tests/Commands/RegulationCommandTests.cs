using System.Text.Json;
using Rodwright.Stairs.Regulations;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Commands;

/// <summary>Tables listed and printed, and a shop's own tables beside the job or in a folder that is named.</summary>
public sealed class RegulationCommandTests
{
    private const string Own = """
        { "rodwrightRegulation": 1, "id": "own-heron", "title": "Heron Mill, our stairs", "basedOn": "england-2013-private",
          "clauses": [ { "rule": "going", "clause": "shop 1", "replaces": "1.3, Table 1.1", "least": 222, "most": 300, "source": "what our customers like to walk" } ] }
        """;

    private static string Job => Samples.Text("left-kite-low").Replace("england-2013-private", "own-heron");

    [Fact]
    public void Every_table_is_listed()
    {
        var (exit, output, _) = CommandLine.Run("regulation");
        Assert.Equal(Exit.Done, exit);
        Assert.All(RegulationCatalogue.All, t => Assert.Contains(t.Id + " ", output, StringComparison.Ordinal));
        using var json = JsonDocument.Parse(CommandLine.Run("regulation", "--json").Out);
        Assert.Equal(RegulationCatalogue.All.Select(t => t.Id), json.RootElement.GetProperty("regulations").EnumerateArray().Select(t => t.GetProperty("id").GetString()!));
    }

    [Fact]
    public void A_table_is_printed_clause_by_clause_with_its_marks()
    {
        var (exit, output, _) = CommandLine.Run("regulation", "wales-1998-private");
        Assert.Equal(Exit.Done, exit);
        Assert.Contains("245 to 260 mm with a rise of 155 to 220 mm, or 223 to 300 mm with a rise of 165 to 200 mm", output, StringComparison.Ordinal);
        Assert.Contains("not checked against the document", output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(CommandLine.Run("regulation", "usa-irc-2024", "--json").Out);
        var first = json.RootElement.GetProperty("clauses")[0];
        Assert.Equal(("R318.7.5.1", "rise", "text-seen", 7.75 * 25.4), (first.GetProperty("clause").GetString(), first.GetProperty("rule").GetString(), first.GetProperty("evidence").GetString(), first.GetProperty("most").GetDouble()));
    }

    [Fact]
    public void A_document_in_inches_is_printed_in_inches_with_millimetres_beside()
    {
        var output = CommandLine.Run("regulation", "usa-irc-2021").Out;
        Assert.Contains("at most 7 3/4\" (196.85 mm)", output, StringComparison.Ordinal);
        Assert.Contains("at least 10\" (254 mm)", output, StringComparison.Ordinal);
        Assert.Contains("at most 12' 7\" (3835.4 mm)", output, StringComparison.Ordinal);
        Assert.DoesNotContain("¾ in)", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_table_is_told_the_nearest()
    {
        var (exit, _, error) = CommandLine.Run("regulation", "scotland-privat");
        Assert.Equal(Exit.Errors, exit);
        Assert.Contains("did you mean scotland-private?", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rules_are_listed() => Assert.Contains("tapered-going", CommandLine.Run("regulation", "--rules").Out, StringComparison.Ordinal);

    [Fact]
    public void The_schema_of_a_regulation_file_is_printed()
    {
        using var json = JsonDocument.Parse(CommandLine.Run("schema", "--regulation").Out);
        Assert.Equal("Rodwright regulation", json.RootElement.GetProperty("title").GetString());
    }

    [Fact]
    public void A_number_from_memory_says_so_in_check_and_in_json()
    {
        using var line = new CommandLine();
        var job = line.Write("a.stair.json", Samples.Text("left-kite-low").Replace("england-2013-private", "northern-ireland-2012-private"));
        Assert.Contains("not checked against the document", CommandLine.Run("check", job).Out, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(CommandLine.Run("setout", job, "--json").Out);
        var regulation = json.RootElement.GetProperty("regulation");
        Assert.True(regulation.GetProperty("fromMemory").GetInt32() > 10);
        Assert.All(regulation.GetProperty("checks").EnumerateArray().Where(c => c.GetProperty("evidence").GetString() == "memory"),
            c => Assert.Equal("not checked against the document", c.GetProperty("evidenceWords").GetString()));
    }

    [Fact]
    public void A_table_in_the_folder_beside_the_job_judges_it()
    {
        using var line = new CommandLine();
        var job = line.Write("a.stair.json", Job);
        Directory.CreateDirectory(line.PathOf("regulations"));
        line.Write("regulations/heron.regulation.json", Own);
        var (exit, output, error) = CommandLine.Run("check", job);
        Assert.Equal((Exit.Done, ""), (exit, error));
        Assert.Contains("Heron Mill, our stairs (the shop's own table)", output, StringComparison.Ordinal);
        Assert.Contains("shop 1", output, StringComparison.Ordinal);
        Assert.Contains("the shop's own", output, StringComparison.Ordinal);
        Assert.Equal(Exit.Done, CommandLine.Run("setout", job).Exit);
        Assert.Equal(Exit.Done, CommandLine.Run("prove", job).Exit);
    }

    [Fact]
    public void A_folder_that_is_named_takes_the_place_of_the_one_beside_the_job()
    {
        using var line = new CommandLine();
        var job = line.Write("a.stair.json", Job);
        Directory.CreateDirectory(line.PathOf("regulations"));
        Directory.CreateDirectory(line.PathOf("tables"));
        line.Write("tables/heron.regulation.json", Own);
        line.Write("regulations/heron.regulation.json", "not read");
        Assert.Equal(Exit.Done, CommandLine.Run("check", job, "--regulations", line.PathOf("tables")).Exit);
        Assert.Equal(Exit.Errors, CommandLine.Run("check", job).Exit);
    }

    [Fact]
    public void A_job_whose_table_is_not_here_is_refused_with_what_would_help()
    {
        using var line = new CommandLine();
        var (exit, _, error) = CommandLine.Run("check", line.Write("a.stair.json", Job));
        Assert.Equal(Exit.Errors, exit);
        Assert.Contains("RW1027: regulation: the shop's own table own-heron is not here", error, StringComparison.Ordinal);
        Assert.Contains("beside the job", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_tables_are_refused_with_all_their_faults_and_two_of_one_id_too()
    {
        using var line = new CommandLine();
        line.Write("a.regulation.json", Own.Replace("\"least\": 222", "\"least\": 400").Replace("what our customers like to walk", " "));
        line.Write("b.regulation.json", Own.Replace("own-heron", "heron"));
        line.Write("c.regulation.json", Own);
        line.Write("d.regulation.json", Own);
        var (exit, output, error) = CommandLine.Run("regulation", "--regulations", line.Folder);
        Assert.Equal((Exit.Errors, ""), (exit, output));
        Assert.Contains("a.regulation.json: error RW1023: clauses[0].source", error, StringComparison.Ordinal);
        Assert.Contains("a.regulation.json: error RW1208: clauses[0].least", error, StringComparison.Ordinal);
        Assert.Contains("b.regulation.json: error RW1201: id", error, StringComparison.Ordinal);
        Assert.Contains("d.regulation.json: error RW1225: id", error, StringComparison.Ordinal);
        Assert.Contains("4 errors", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_said_so()
    {
        var (exit, _, error) = CommandLine.Run("check", Samples.PathOf("left-kite-low"), "--regulations", "nowhere");
        Assert.Equal(Exit.Errors, exit);
        Assert.Contains("RW6004", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pack_takes_the_table_with_it_and_can_be_set_out_again_from_what_is_in_it()
    {
        using var line = new CommandLine();
        Directory.CreateDirectory(line.PathOf("tables"));
        line.Write("tables/heron.regulation.json", Own);
        var job = line.Write("a.stair.json", Job);
        Assert.Equal(Exit.Done, CommandLine.Run("pack", job, "--out", line.PathOf("pack"), "--regulations", line.PathOf("tables")).Exit);
        Assert.True(File.Exists(line.PathOf("pack/regulations/own-heron.regulation.json")));
        Assert.Equal(Exit.Done, CommandLine.Run("check", line.PathOf("pack/job.stair.json")).Exit);
    }
}
