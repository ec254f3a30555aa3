using System.Text.Json;
using Json.Schema;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Shops;

public sealed class ShopFileTests
{
    private const string Good = """
        { "rodwrightShop": 1, "name": "Heron Mill", "currency": "€", "saw": { "kerf": 3.2, "endTrim": 20, "edgeTrim": 2, "leastOffcut": 500 }, "router": { "cutter": 8, "handCutter": 12.7, "bush": 27 },
          "allowances": { "planing": 4, "planingOver": 6, "planingLimit": 100, "length": 12, "stringEnd": 50, "newelEnd": 30, "glueEnd": 8, "glueBack": 9 },
          "boards": [
            { "material": "oak", "thickness": 25, "width": 150, "lengths": [2400, 3000], "pricePerMetre": 9.5, "grade": "prime" },
            { "material": "oak", "thickness": 38, "width": 275, "lengths": 3600, "price": 55, "quantity": 2 } ],
          "sheets": [ { "material": "birch ply", "thickness": 12, "length": 2440, "width": 1220, "price": 48 } ],
          "offcuts": [ { "id": "K1", "material": "oak", "thickness": 25, "width": 150, "length": 1100 }, { "id": "K2", "material": "oak", "thickness": 25, "width": 100, "length": 900 } ],
          "fixings": [ { "name": "wedges", "per": "tread-wedge", "price": 0.2 } ],
          "work": [ { "name": "housing", "per": "housing", "minutes": 4 } ],
          "rates": { "hour": 42, "waste": 15, "margin": 25 } }
        """;

    private static readonly JsonSchema Schema = JsonSchema.FromText(ShopFile.Schema());

    /// <summary>One wrong thing each: what it is, what stands there, what is put in its place, the code and the place of the finding; whether a schema can see it too.</summary>
    public static TheoryData<string, string, string, string, string, bool> Bad => new()
    {
        { "no version", "\"rodwrightShop\": 1, ", "", "RW1008", "rodwrightShop", true },
        { "another version", "\"rodwrightShop\": 1", "\"rodwrightShop\": 2", "RW1026", "rodwrightShop", true },
        { "no name", "\"name\": \"Heron Mill\", ", "", "RW1008", "name", true },
        { "an unknown field", "\"currency\"", "\"coin\"", "RW1007", "coin", true },
        { "a kerf below nothing", "\"kerf\": 3.2", "\"kerf\": -1", "RW1017", "saw.kerf", true },
        { "a bush its cutter does not pass", "\"bush\": 27", "\"bush\": 12.7", "RW1307", "router.bush", false },
        { "a cutter wider than any", "\"cutter\": 8", "\"cutter\": 80", "RW1020", "router.cutter", true },
        { "a board without a timber", "\"material\": \"oak\", \"thickness\": 38, ", "\"thickness\": 38, ", "RW1008", "boards[1].material", true },
        { "a board without a price", "\"price\": 55, ", "", "RW1302", "boards[1]", false },
        { "a board with two prices", "\"pricePerMetre\": 9.5", "\"pricePerMetre\": 9.5, \"price\": 20", "RW1303", "boards[0]", false },
        { "a board listed twice", "[2400, 3000]", "[2400, 3000, 2400]", "RW1305", "boards[0]", false },
        { "half a board", "\"quantity\": 2", "\"quantity\": 2.5", "RW1022", "boards[1].quantity", true },
        { "two offcuts of one name", "\"K2\"", "\"K1\"", "RW1304", "offcuts[1].id", false },
        { "a fixing by something unknown", "\"per\": \"tread-wedge\"", "\"per\": \"treadwedge\"", "RW1301", "fixings[0].per", true },
        { "an operation by something unknown", "\"per\": \"housing\"", "\"per\": \"house\"", "RW1301", "work[0].per", true },
        { "work without a price of an hour", "\"hour\": 42, ", "", "RW1306", "rates.hour", false },
        { "a price in quotation marks", "\"price\": 48", "\"price\": \"48\"", "RW1016", "sheets[0].price", true },
    };

    [Fact]
    public void A_shop_file_in_order_reads_and_is_written_as_it_was()
    {
        var read = ShopFile.Read(Good);
        Assert.Empty(read.Findings);
        Assert.Equal((8.0, 7.15), (read.Value!.Router.Cutter, Math.Round(read.Value.Router.Offset, 9)));
        Assert.Equal((3.2, 500.0, "K2", 55.0, 28.5), (read.Value!.Saw.Kerf, read.Value.Saw.LeastOffcut, read.Value.Offcuts[1].Id, read.Value.Boards[1].PriceOf(3600), read.Value.Boards[0].PriceOf(3000)));
        Assert.Equal(read.Value, ShopFile.Read(ShopFile.Write(read.Value)).Value);
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void One_wrong_thing_gets_one_finding_that_says_where_and_what_would_help(string what, string old, string made, string code, string where, bool seenBySchema)
    {
        var text = Good.Replace(old, made, StringComparison.Ordinal);
        Assert.NotEqual(Good, text);
        var outcome = ShopFile.Read(text);
        Assert.Null(outcome.Value);
        var finding = Assert.Single(outcome.Findings);
        Assert.Equal((code, where, Severity.Error), (finding.Code, finding.Where, finding.Severity));
        Assert.False(string.IsNullOrWhiteSpace(finding.Hint), what);
        Assert.DoesNotContain("job file", finding.Message + finding.Hint, StringComparison.Ordinal);
        Assert.Equal(!seenBySchema, IsValid(text));
    }

    [Fact]
    public void Everything_wrong_with_a_shop_is_reported_at_once()
    {
        var text = Good.Replace("\"kerf\": 3.2", "\"kerf\": 99").Replace("\"price\": 55, ", "").Replace("\"K2\"", "\"K1\"").Replace("\"per\": \"housing\"", "\"per\": \"house\"");
        Assert.Equal([("RW1020", "saw.kerf"), ("RW1301", "work[0].per"), ("RW1302", "boards[1]"), ("RW1304", "offcuts[1].id")], ShopFile.Read(text).Findings.Select(f => (f.Code, f.Where)).Order());
    }

    [Fact]
    public void Every_code_of_a_shop_is_tested_and_none_is_another_files()
    {
        var codes = typeof(ShopCodes).GetFields().Select(f => (string)f.GetRawConstantValue()!).ToList();
        Assert.Empty(codes.Except(Bad.Select(b => b.Data.Item4)));
        var others = new[] { typeof(OwnCodes), typeof(JobCodes) }.SelectMany(t => t.GetFields()).Select(f => (string)f.GetRawConstantValue()!);
        Assert.Empty(codes.Intersect(others));
    }

    [Fact]
    public void The_schema_is_a_valid_schema_and_takes_what_the_reader_takes()
    {
        using var schema = JsonDocument.Parse(ShopFile.Schema());
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
        Assert.True(IsValid(Good));
        Assert.True(IsValid(ShopFile.Write(UsualShop.Of("redwood", "plywood"))));
    }

    [Fact]
    public void The_usual_shop_is_a_shop_file_in_order()
    {
        var shop = UsualShop.Of("redwood", "plywood");
        Assert.Equal(shop, ShopFile.Read(ShopFile.Write(shop)).Value);
        Assert.Contains("example prices", shop.Name, StringComparison.Ordinal);
        Assert.Empty(UsualShop.Of("oak", "poplar").Sheets);
        Assert.Contains(UsualShop.Of("oak", "poplar").Boards, b => b.Material == "poplar");
    }

    [Fact]
    public void The_usual_shop_of_a_job_in_inches_sells_by_the_quarter_inch_and_the_foot()
    {
        var shop = UsualShop.For(Samples.Job("feet-and-inches"));
        Assert.Equal("$", shop.Currency);
        Assert.True(IsValid(ShopFile.Write(shop)));
        Assert.Equal(shop, ShopFile.Read(ShopFile.Write(shop)).Value);
        // Hardwood is sold in quarters of an inch of thickness, rough, lengths in feet (common practice; NHLA Rules for the Measurement and Inspection of Hardwood, 4/4 to 16/4, from memory).
        Assert.All(shop.Boards, b => Assert.Equal(0, Math.IEEERemainder(b.Thickness / 25.4 * 4, 1), 1e-9));
        Assert.All(shop.Boards.SelectMany(b => b.Lengths), l => Assert.Equal(0, Math.IEEERemainder(l / 304.8, 2), 1e-9));
        // Ten feet of 1 x 12 are ten board feet, at eight dollars each.
        var wide = shop.Boards.First(b => Math.Abs(b.Thickness - 25.4) < 1e-9 && Math.Abs(b.Width - 304.8) < 1e-9);
        Assert.Equal(80, wide.PricePerMetre!.Value * 3.048, 0.02);
        Assert.Equal("£", UsualShop.For(Samples.Job("straight-flight")).Currency);
    }

    private static bool IsValid(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
