using System.Text.Json;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Commands;

public sealed class CompareTests
{
    [Fact]
    public void Pieces_and_sheets_that_are_another_are_told_and_the_rest_counted()
    {
        using var line = new CommandLine();
        var now = line.Write("now.stair.json", File.ReadAllText(Samples.PathOf("left-kite-low")).Replace("\"width\": 860", "\"width\": 870", StringComparison.Ordinal));

        var (exit, output, _) = CommandLine.Run("compare", Samples.PathOf("left-kite-low"), now);

        Assert.Equal(Exit.Done, exit);
        Assert.Contains("width over the strings 860 to 870 mm", output);
        Assert.Matches(@"T2 +tread 2: changed\s+length of the board: [\d.]+ instead of [\d.]+: 10 more", output);
        Assert.Matches(@"print again +\d+  Plan", output);
        Assert.Matches(@"\d+ pieces unchanged", output);
    }

    [Fact]
    public void Json_holds_every_promised_name()
    {
        using var line = new CommandLine();
        var now = line.Write("now.stair.json", File.ReadAllText(Samples.PathOf("left-kite-low")).Replace("\"width\": 860", "\"width\": 870", StringComparison.Ordinal));

        var (exit, output, _) = CommandLine.Run("compare", Samples.PathOf("left-kite-low"), now, "--json");

        Assert.Equal(Exit.Done, exit);
        using var json = JsonDocument.Parse(output);
        Assert.Equal("width", Assert.Single(json.RootElement.GetProperty("job").EnumerateArray()).GetProperty("field").GetString());
        var tread = json.RootElement.GetProperty("pieces").EnumerateArray().Single(p => p.GetProperty("part").GetString() == "tread-2");
        Assert.Equal("changed", tread.GetProperty("change").GetString());
        Assert.Equal(10, tread.GetProperty("differences").EnumerateArray().Single(d => d.GetProperty("what").GetString() == "length of the board").GetProperty("by").GetDouble(), 1e-4);
        Assert.Contains(json.RootElement.GetProperty("sheets").EnumerateArray(), s => s.GetProperty("name").GetString() == "plan" && s.GetProperty("change").GetString() == "changed");
        Assert.True(json.RootElement.GetProperty("piecesUnchanged").GetInt32() > 3);
    }

    [Fact]
    public void A_job_compared_with_itself_needs_nothing_made_or_printed()
    {
        var (exit, output, _) = CommandLine.Run("compare", Samples.PathOf("straight-flight"), Samples.PathOf("straight-flight"));
        Assert.Equal(Exit.Done, exit);
        Assert.Contains("The jobs are the same.", output);
        Assert.Matches(@"All \d+ pieces stay as they are", output);
        Assert.Matches(@"None of the \d+ sheets need be printed again", output);
    }

    [Fact]
    public void What_is_wrong_with_either_job_is_told_at_once()
    {
        using var line = new CommandLine();
        var (one, other) = (line.Write("one.stair.json", "{ \"rodwright\": 1, \"going\": 225 }"), line.Write("other.stair.json", "{"));
        var (exit, output, error) = CommandLine.Run("compare", one, other);
        Assert.Equal(Exit.Errors, exit);
        Assert.Empty(output);
        Assert.Contains("one.stair.json: error", error);
        Assert.Contains("other.stair.json: error", error);
    }
}
