using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Properties;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Sheets;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Pieces;

public sealed class RailSheetTests
{
    private static Stair With(string sample) => Stair.SetOut(Samples.Job(sample) with { Balustrade = new() { WallRail = new() { Wanted = WallRailWanted.Always } } }).Value!;

    private static RodJob Rod(Stair stair, string paper) => PaperStock.TryParse(paper, out var stock, out _) ? new(stair, stair.Prove(), new(stock, null, "1 March")) : throw new ArgumentException(paper);

    public static TheoryData<string, string> All
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var sample in (string[])["dog-leg", "balanced-turn", "feet-and-inches", "straight-flight", "half-scale-teaching"])
                foreach (var paper in (string[])["A4", "A3", "A1", "610"]) data.Add(sample, paper);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_on_a_rail_sheet_overlaps_or_leaves_the_frame(string sample, string paper)
    {
        var rod = Rod(With(sample), paper);
        IReadOnlyList<Sheet> sheets = [.. RailSheets.Make(rod), .. CapSheets.Make(rod)];
        Assert.True(sheets.Count >= 4);
        Assert.Equal(sheets.Count, sheets.Select(s => s.Name).Distinct().Count());
        var faults = sheets.SelectMany(s => SheetCheck.Overlaps(s).Select(f => $"{s.Name}: {f.Message} at {f.Where}")).ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} faults\n" + string.Join('\n', faults.Take(40)));
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    [InlineData("A1")]
    public void Nothing_overlaps_on_sheets_of_a_lined_well(string paper)
    {
        var (rooms, linings) = (0, 0);
        Rooms.Jobs.Holds(job =>
        {
            if (Stair.SetOut(job with { LandingEdge = new() }).Value is not { } stair || !stair.Kit.Parts.Any(p => p.Kind == PartKind.Apron)) return;
            var rod = Rod(stair, paper);
            foreach (var sheet in (IEnumerable<Sheet>)[.. RoomSheets.Make(rod), .. RailSheets.Make(rod)])
            {
                Assert.Empty(SheetCheck.Overlaps(sheet));
                Interlocked.Increment(ref rooms);
            }
            Interlocked.Add(ref linings, stair.Kit.Parts.Count(p => p.Kind == PartKind.Apron));
        }, iter: 40);
        Assert.True(rooms > 20 && linings > 20, $"{rooms} sheets, {linings} linings");
    }

    /// <summary>Where the floor stands out into the well two linings of 9 meet in a mitre; the other corners are butted, their ends square.</summary>
    [Fact]
    public void A_mitred_lining_says_which_side_is_longer()
    {
        var job = Samples.Job("loft-under-slope") is var loft ? loft with
        {
            LandingEdge = new(),
            Survey = loft.Survey with { Well = new() { Corners = [new(1287, 0), new(3743, 0), new(3743, 1400), new(2243, 1400), new(2243, 1900), new(1287, 1900)], Trimmer = Readings.Of(232) } },
        } : null!;
        var texts = RailSheets.Make(Rod(Stair.SetOut(job).Value!, "A1")).SelectMany(s => FlatMarks.Of(s.Marks)).Select(m => m.Mark).OfType<TextMark>().Select(t => t.Text).ToList();
        Assert.Equal(2, texts.Count(t => t.Contains("45° off square through its thickness, the face longer", StringComparison.Ordinal)));
    }

    /// <summary>
    /// Rise 200, going 225: 41.6335 degrees. Balusters a gap and a side apart on the level stand 1 / cos 41.6335 = 1.33796 times as far apart along the rail's edge; the plumb ends are 41.63 off square.
    /// </summary>
    [Fact]
    public void Balusters_are_marked_along_a_rail_as_far_apart_as_they_stand()
    {
        var stair = With("left-kite-low");
        var run = BalustradePlan.Of(stair.Kit.Plan)!.Rails.Single(r => r.Id == "handrail-2");
        var row = BalustradePlan.Of(stair.Kit.Plan)!.RowOf(stair.Kit.Plan, run);
        var (rail, below) = (stair.Kit.Find("handrail-2"), stair.Kit.Find("base-rail-2"));
        foreach (var part in new[] { rail, below })
        {
            var stations = RailSheets.Stations(stair, part);
            Assert.Equal(row.Count, stations.Count);
            for (var i = 1; i < stations.Count; i++) Assert.Equal((row.Gap + row.Side) * 1.33796, stations[i].DistanceTo(stations[i - 1]), 1e-3);
            foreach (var right in (bool[])[false, true]) Assert.Equal(41.6335, Assert.Single(PieceEnds.Bevels(part, right)).Degrees, 1e-4);
        }
        // From the rail's left end: its lower corner is the shoulder's foot, and the first baluster's near side a gap further on.
        var first = RailSheets.Stations(stair, rail)[0];
        Assert.Equal(0, first.Y, 1e-6);
        var foot = rail.FaceSide.Outline.Vertices.Select(v => rail.Blank.OnBoard(v.At)).Where(p => Math.Abs(p.Y) < 1e-6).Min(p => p.X);
        Assert.Equal(row.Gap * 1.33796, first.X - foot, 1e-3);
    }

    /// <summary>Scribed under a string that comes back at the same pitch of 38.5765 degrees: 90 less twice that is 12.8469 off square.</summary>
    [Fact]
    public void A_scribed_end_is_read_off_the_piece()
    {
        var rail = With("dog-leg").Kit.Find("handrail-1");
        Assert.Equal([12.8469, 38.5765], new[] { false, true }.Select(r => Math.Round(Assert.Single(PieceEnds.Bevels(rail, r)).Degrees, 4)).Order());
    }
}
