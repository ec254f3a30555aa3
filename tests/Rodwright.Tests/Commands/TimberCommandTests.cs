using System.Text.Json;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Commands;

/// <summary>Cutting list, board plan and costing on the command line.</summary>
public sealed class TimberCommandTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_has_its_list_and_boards_as_json(string name)
    {
        var (exit, output, error) = CommandLine.Run("timber", Samples.PathOf(name), "--json");
        Assert.Equal((Exit.Done, ""), (exit, error));
        using var json = JsonDocument.Parse(output);
        var root = json.RootElement;
        Assert.True(root.GetProperty("proven").GetBoolean());
        Assert.Equal(root.GetProperty("cost").GetDouble(), root.GetProperty("costBound").GetDouble(), 1e-6);
        Assert.InRange(root.GetProperty("bound").GetDouble(), 0.5 * root.GetProperty("boughtLength").GetDouble(), root.GetProperty("boughtLength").GetDouble() + 1e-6);
        var boards = root.GetProperty("boards").EnumerateArray().ToList();
        Assert.Equal(root.GetProperty("boughtLength").GetDouble(), boards.Where(b => !b.GetProperty("stock").GetString()!.Contains("plywood")).Sum(b => b.GetProperty("length").GetDouble()), 1e-6);
        Assert.All(boards, b => Assert.True(b.GetProperty("cuts").GetArrayLength() > 0 && b.GetProperty("offcut").GetDouble() >= 0));
        // Every piece of wood on the list is cut from some board, as often as it is wanted.
        var wanted = root.GetProperty("pieces").EnumerateArray().Where(p => p.GetProperty("from").GetString() is "board" or "sheet").SelectMany(p => p.GetProperty("wood").EnumerateArray()).Sum(w => w.GetProperty("quantity").GetInt32());
        Assert.Equal(wanted, boards.Sum(b => b.GetProperty("cuts").GetArrayLength()));
    }

    [Fact]
    public void The_list_is_printed_with_finished_and_sawn_sizes_and_what_is_bought()
    {
        var (exit, output, _) = CommandLine.Run("timber", Samples.PathOf("straight-flight"));
        Assert.Equal(Exit.Done, exit);
        Assert.Contains("example prices", output, StringComparison.Ordinal);
        Assert.Contains("proven best", output, StringComparison.Ordinal);
        Assert.Contains("strip a", output, StringComparison.Ordinal);
        Assert.Contains("tread wedges", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_quotation_and_tables_are_written_as_files()
    {
        using var at = new CommandLine();
        Assert.Equal(Exit.Done, CommandLine.Run("timber", Samples.PathOf("straight-flight"), "--out", at.PathOf("timber")).Exit);
        Assert.Equal(["board-plan.csv", "costing.csv", "cutting-list.csv", "fixings.csv", "quotation.pdf", "timber.pdf", "timber.xlsx"], Directory.GetFiles(at.PathOf("timber")).Select(f => Path.GetFileName(f)).Order());
        Assert.StartsWith("Mark,Piece,No.", File.ReadAllText(at.PathOf("timber/cutting-list.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void Offcuts_kept_from_one_job_are_used_for_the_next()
    {
        using var at = new CommandLine();
        var shop = at.PathOf("rack.shop.json");
        Assert.Equal(Exit.Done, CommandLine.Run("timber", Samples.PathOf("bull-nose"), "--keep", shop).Exit);
        Assert.NotEmpty(ShopFile.Read(File.ReadAllText(shop)).Value!.Offcuts);
        var (exit, output, _) = CommandLine.Run("timber", Samples.PathOf("bull-nose"), "--shop", shop, "--keep", shop);
        Assert.Equal(Exit.Done, exit);
        Assert.Contains("offcut K", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bad_shop_file_is_refused_with_all_its_faults()
    {
        using var at = new CommandLine();
        var shop = at.Write("bad.shop.json", """{ "rodwrightShop": 1, "name": "Heron", "saw": { "kerf": 99 }, "boards": [ { "material": "redwood", "thickness": 25, "width": 150, "lengths": 3000 } ] }""");
        var (exit, output, error) = CommandLine.Run("timber", Samples.PathOf("straight-flight"), "--shop", shop);
        Assert.Equal((Exit.Errors, ""), (exit, output));
        Assert.Contains("RW1302", error, StringComparison.Ordinal);
        Assert.Contains("2 errors in the shop file", error, StringComparison.Ordinal);
        Assert.Contains("RW6001", CommandLine.Run("quote", Samples.PathOf("straight-flight"), "--shop", at.PathOf("none.shop.json")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_quote_is_reckoned_line_by_line()
    {
        var (exit, output, _) = CommandLine.Run("quote", Samples.PathOf("straight-flight"));
        Assert.Equal(Exit.Done, exit);
        Assert.Contains("margin", output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(CommandLine.Run("quote", Samples.PathOf("straight-flight"), "--json").Out);
        var lines = json.RootElement.GetProperty("lines").EnumerateArray().ToList();
        Assert.Equal(json.RootElement.GetProperty("costs").GetDouble(), lines.Where(l => l.GetProperty("group").GetString() != "total").Sum(l => l.GetProperty("amount").GetDouble()), 1e-6);
    }

    [Fact]
    public void The_schema_of_a_shop_file_is_printed() => Assert.Contains("Rodwright shop", CommandLine.Run("schema", "--shop").Out, StringComparison.Ordinal);
}
