using System.Globalization;
using System.Text.Json;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Commands;

public class CommandTests
{
    public static TheoryData<string> SampleNames => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(SampleNames))]
    public void Every_sample_is_set_out_checked_and_proved(string name)
    {
        Assert.Equal(Exit.Done, CommandLine.Run("setout", Samples.PathOf(name)).Exit);
        var (checkExit, checkOut, _) = CommandLine.Run("check", Samples.PathOf(name));
        Assert.Equal(Exit.Done, checkExit);
        Assert.Contains("0 fail", checkOut);
        var (proveExit, proveOut, _) = CommandLine.Run("prove", Samples.PathOf(name));
        Assert.Equal(Exit.Done, proveExit);
        Assert.Contains("It goes together.", proveOut);
    }

    [Theory]
    [MemberData(nameof(SampleNames))]
    public void Json_holds_every_promised_name(string name)
    {
        var (exit, output, _) = CommandLine.Run("setout", Samples.PathOf(name), "--json");
        Assert.Equal(Exit.Done, exit);
        using var json = JsonDocument.Parse(output);
        var root = json.RootElement;
        Has(root.GetProperty("steps"), "risers", "rise", "going", "pitchDegrees");
        Has(root.GetProperty("riserLines")[0], "number", "inner", "walking", "outer");
        foreach (var step in root.GetProperty("taperedSteps").EnumerateArray())
            Has(step, "number", "goingChord", "goingArc", "narrowAlongFaces", "narrowStraight", "narrowTreadWidth", "wide", "angleDegrees");
        foreach (var turn in root.GetProperty("turns").EnumerateArray()) Has(turn, "kind", "hand", "firstRiser", "lastRiser", "decidedBy");
        Has(root.GetProperty("strings")[0], "name", "kind", "pitchPoints", "upperEdge", "lowerEdge", "blank", "jointedUp", "leastWidth", "housings");
        Has(root.GetProperty("strings")[0].GetProperty("blank"), "length", "width", "thickness");
        Assert.Equal(3, root.GetProperty("strings")[0].GetProperty("upperEdge")[0].GetArrayLength());
        foreach (var newel in root.GetProperty("newels").EnumerateArray())
        {
            Has(newel, "name", "side", "length", "faces");
            Assert.Equal(["S", "E", "N", "W"], newel.GetProperty("faces").EnumerateArray().Select(f => f.GetProperty("looks").GetString()!));
            foreach (var feature in newel.GetProperty("faces").EnumerateArray().SelectMany(f => f.GetProperty("features").EnumerateArray()))
                Has(feature, "joint", "shape", "depth", "heights", "fromLeft");
        }
        Assert.NotEmpty(root.GetProperty("parts").EnumerateArray());
        Has(root.GetProperty("regulation"), "id", "checks");
        Has(root.GetProperty("regulation").GetProperty("checks")[0], "clause", "rule", "measured", "limit", "unit", "outcome", "evidence");
        Assert.True(root.GetProperty("proof").GetProperty("holds").GetBoolean());
        foreach (var finding in root.GetProperty("findings").EnumerateArray()) Has(finding, "code", "severity", "where", "message", "hint");
    }

    private static void Has(JsonElement element, params string[] names)
    {
        foreach (var name in names) Assert.True(element.TryGetProperty(name, out _), name);
    }

    [Fact]
    public void A_right_hand_stair_lies_at_negative_x()
    {
        using var json = JsonDocument.Parse(CommandLine.Run("setout", Samples.PathOf("right-kite-top"), "--json").Out);
        foreach (var line in json.RootElement.GetProperty("riserLines").EnumerateArray().Take(3))
        {
            Assert.True(line.GetProperty("outer")[0].GetDouble() < 0);
            Assert.True(line.GetProperty("inner")[0].GetDouble() > line.GetProperty("outer")[0].GetDouble());
        }
        Assert.Equal("right", json.RootElement.GetProperty("turns")[0].GetProperty("hand").GetString());
    }

    [Fact]
    public void Schema_is_printed() => Assert.Contains("\"$schema\"", CommandLine.Run("schema").Out);

    [Theory]
    [InlineData("setout")]
    [InlineData("fly", "x.stair.json")]
    [InlineData("pack", "x.stair.json")]
    [InlineData("pack", "x.stair.json", "--out", "o", "--paper", "A9")]
    [InlineData("pack", "x.stair.json", "--out", "o", "--paper", "120x120")]
    [InlineData("pack", "x.stair.json", "--out", "o", "--scale", "small")]
    [InlineData("setout", "x.stair.json", "--loud")]
    public void A_wrong_command_line_exits_2_and_says_what_is_wrong(params string[] args)
    {
        var (exit, _, error) = CommandLine.Run(args);
        Assert.Equal(Exit.Usage, exit);
        Assert.Contains("rodwright", error);
        Assert.DoesNotContain(" at Rodwright.", error);
    }

    [Fact]
    public void A_missing_file_is_an_error_not_a_trace()
    {
        var (exit, _, error) = CommandLine.Run("setout", "no-such.stair.json");
        Assert.Equal(Exit.Errors, exit);
        Assert.Contains("RW6001", error);
    }

    [Fact]
    public void Every_error_is_reported_at_once_and_nothing_is_written()
    {
        using var here = new CommandLine();
        var job = here.Write("bad.stair.json", """
            { "rodwright": 1, "title": "", "regulation": "atlantis", "survey": { "floorToFloor": [2600, 2650] },
              "layout": { "hand": "left", "sequence": [ { "flight": -2 } ] }, "going": "wide", "width": 860, "colour": "red" }
            """);
        var (exit, output, error) = CommandLine.Run("pack", job, "--out", here.PathOf("pack"));
        Assert.Equal(Exit.Errors, exit);
        Assert.Empty(output);
        foreach (var field in new[] { "title", "regulation", "survey.floorToFloor", "flight", "going", "colour" }) Assert.Contains(field, error);
        Assert.False(Directory.Exists(here.PathOf("pack")));
    }

    [Fact]
    public void A_breach_is_drawn_and_packed_but_does_not_pass_check()
    {
        using var here = new CommandLine();
        var text = System.Text.RegularExpressions.Regex.Replace(Samples.Text("straight-flight"), "\"going\": *[0-9.]+", "\"going\": 190");
        var job = here.Write("steep.stair.json", text);
        Assert.Equal(Exit.Done, CommandLine.Run("setout", job).Exit);
        Assert.Equal(Exit.Errors, CommandLine.Run("check", job).Exit);
        var (exit, _, error) = CommandLine.Run("pack", job, "--out", here.PathOf("pack"), "--paper", "A4");
        Assert.Equal(Exit.Done, exit);
        Assert.Contains("breach", error);
        Assert.True(File.Exists(here.PathOf("pack/set.pdf")));
    }

    [Fact]
    public void A_second_pack_replaces_the_first_and_leaves_other_files_alone()
    {
        using var here = new CommandLine();
        var folder = here.PathOf("pack");
        Assert.Equal(Exit.Done, CommandLine.Run("pack", Samples.PathOf("left-kite-low"), "--out", folder, "--paper", "A3").Exit);
        File.WriteAllText(Path.Combine(folder, "notes.txt"), "mine");
        Assert.True(File.Exists(Path.Combine(folder, "dxf/N2.dxf")));
        Assert.Equal(Exit.Done, CommandLine.Run("pack", Samples.PathOf("straight-flight"), "--out", folder, "--paper", "A3").Exit);
        Assert.False(File.Exists(Path.Combine(folder, "svg/tread-4.svg")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, "notes.txt")));
        var listed = File.ReadAllLines(Path.Combine(folder, "contents.csv")).Skip(1).Select(l => l.Split(',')[0]).ToList();
        Assert.All(listed, name => Assert.True(File.Exists(Path.Combine(folder, name)), name));
        Assert.Empty(Directory.EnumerateFiles(folder, "*.new", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_pack_with_everything_lists_models_and_timber_among_its_files()
    {
        using var here = new CommandLine();
        var folder = here.PathOf("pack");
        Assert.Equal(Exit.Done, CommandLine.Run("pack", Samples.PathOf("straight-flight"), "--out", folder, "--model", "--timber", "--booklet").Exit);
        var listed = File.ReadAllLines(Path.Combine(folder, "contents.csv")).Skip(1).Select(l => l.Split(',')[0]).ToList();
        Assert.All(new[] { "stair.glb", "stair.step", "stair.ifc", "timber/timber.pdf", "timber/quotation.pdf", "timber/timber.xlsx", "booklet.pdf" }, name => Assert.Contains(name, listed));
        Assert.All(listed, name => Assert.True(File.Exists(Path.Combine(folder, name)), name));
        var bad = here.Write("bad.shop.json", "{ }");
        Assert.Equal(Exit.Errors, CommandLine.Run("pack", Samples.PathOf("straight-flight"), "--out", here.PathOf("none"), "--timber", "--shop", bad).Exit);
        Assert.False(Directory.Exists(here.PathOf("none")));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_result_is_the_same_bytes_under_any_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        var usual = CommandLine.Run("setout", Samples.PathOf("left-kite-low"), "--json").Out + CommandLine.Run("check", Samples.PathOf("left-kite-low")).Out;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.Equal(usual, CommandLine.Run("setout", Samples.PathOf("left-kite-low"), "--json").Out + CommandLine.Run("check", Samples.PathOf("left-kite-low")).Out);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
