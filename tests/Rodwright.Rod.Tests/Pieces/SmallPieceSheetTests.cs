using System.Text.RegularExpressions;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Pieces.Small;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Pieces;

/// <summary>Sheets of wedges, glue blocks, pegs, brackets and carriages.</summary>
public sealed partial class SmallPieceSheetTests
{
    /// <summary>A sample with everything; what its own unit makes usual where its file says nothing of it.</summary>
    private static Job Full(string sample)
    {
        var (job, text) = (Samples.Job(sample), Samples.Text(sample));
        if (!job.Units.IsInches) return job with { SmallParts = new(), Carriage = new() { Over = 400 }, Balustrade = job.Balustrade ?? new() { WallRail = new() { Wanted = WallRailWanted.Always } } };
        foreach (var group in (string[])["smallParts", "carriage", "balustrade"])
            if (!text.Contains($"\"{group}\"", StringComparison.Ordinal)) text = text.Replace("\"going\":", $"\"{group}\": {{}}, \"going\":", StringComparison.Ordinal);
        return JobFile.Read(text).Value!;
    }

    private static RodJob Rod(Job job, string paper = "A3") => PaperStock.TryParse(paper, out var stock, out _) && Stair.SetOut(job).Value is { } stair
        ? new(stair, stair.Prove(), new(stock, null, "1 March")) : throw new ArgumentException(paper);

    private static List<Sheet> Sheets(RodJob rod) => [.. SmallPieceSheets.Make(rod), .. CarriageSheets.Make(rod)];

    private static IEnumerable<string> Texts(IEnumerable<Mark> marks) => FlatMarks.Of(marks).Select(m => m.Mark).OfType<TextMark>().Select(t => t.Text);

    private static string Words(IEnumerable<Sheet> sheets) => string.Join(' ', sheets.SelectMany(s => Texts(s.Marks)));

    public static TheoryData<string, string> All
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var sample in Samples.Names)
                foreach (var paper in (string[])["A4", "A3", "A1", "610", "Tabloid", "Letter"]) data.Add(sample, paper);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_overlaps_and_every_piece_is_drawn(string sample, string paper)
    {
        var rod = Rod(Full(sample), paper);
        var sheets = Sheets(rod);
        Assert.Equal(sheets.Count, sheets.Select(s => s.Name).Distinct().Count());
        var faults = sheets.SelectMany(s => SheetCheck.Overlaps(s).Select(f => $"{s.Name}: {f.Message} at {f.Where}")).ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} faults\n" + string.Join('\n', faults.Take(40)));
        foreach (var sheet in sheets)
            foreach (var text in FlatMarks.Of(sheet.Marks).Select(m => m.Mark).OfType<TextMark>()) Assert.DoesNotContain(sheet.Reserved, b => b.Overlaps(text.Bounds, 0.1));
        var words = Words(sheets);
        foreach (var mark in rod.Stair.Kit.Parts.Where(p => p.Kind is PartKind.Wedge or PartKind.GlueBlock or PartKind.Peg or PartKind.Bracket or PartKind.Carriage or PartKind.CarriageBracket).Select(p => p.Mark).Distinct())
            Assert.Matches($@"\b{mark}\b", words);
    }

    /// <summary>Each group's figures are its own count, and all of them the kit's.</summary>
    [Theory, InlineData("balustrade"), InlineData("dog-leg"), InlineData("balanced-turn")]
    public void Every_piece_is_counted_once_and_told_where_it_goes(string sample)
    {
        var kit = Rod(Full(sample)).Stair.Kit;
        var groups = SmallPieceSheets.Groups(kit);
        foreach (var kind in (PartKind[])[PartKind.Wedge, PartKind.GlueBlock, PartKind.Peg, PartKind.Bracket])
            Assert.Equal(kit.Parts.Count(p => p.Kind == kind), groups.Where(g => g.First.Kind == kind).Sum(g => g.Parts.Length));
        // Read back: "W1 under treads 1-3, 8" names four wedges.
        foreach (var group in groups.Where(g => g.First.Kind == PartKind.Wedge))
        {
            var told = WhereMarks.Of(kit, group.Parts);
            var steps = Run().Matches(MarksOf().Replace(told, "")).Sum(m => m.Groups[2].Success ? int.Parse(m.Groups[2].Value, null) - int.Parse(m.Groups[1].Value, null) + 1 : 1);
            Assert.True(group.Parts.Length == steps, told);
        }
    }

    [GeneratedRegex("([0-9]+)(?:-([0-9]+))?")]
    private static partial Regex Run();

    [GeneratedRegex("[A-Z]+[0-9]+")]
    private static partial Regex MarksOf();

    /// <summary>By hand: 4 thick at the thin end, 1 in 14: over 162 it grows by 162 / 14 = 11.571 to 15.571; atan(1/14) is 4.0856 degrees.</summary>
    [Fact]
    public void A_wedge_is_read_off_its_piece()
    {
        var wedge = Rod(Samples.Job("balustrade")).Stair.Kit.Parts.First(p => p.Mark == "TW1");
        var shape = WedgePiece.Of(wedge);
        Assert.Equal((162.0, 4.0, 15.571, 11.0), (Math.Round(shape.Length, 6), Math.Round(shape.Thin, 6), Math.Round(shape.Thick, 3), Math.Round(shape.Wide, 6)));
        Assert.Equal(14, shape.Taper, 1e-9);
        Assert.Equal(4.0856, shape.Angle.Degrees, 1e-4);
    }

    /// <summary>Those of the other string are the same wedge turned over; drawn once.</summary>
    [Fact]
    public void A_wedge_turned_over_is_no_other_wedge()
    {
        var rod = Rod(Samples.Job("balustrade"));
        var group = Assert.Single(SmallPieceSheets.Groups(rod.Stair.Kit), g => g.First.Mark == "TW1");
        Assert.Equal(["TW1", "TW3"], group.Parts.Select(p => p.Mark).Distinct());
        Assert.Contains("TW1, TW3", Texts(SmallPieceSheets.Make(rod).SelectMany(s => s.Marks)));
    }

    [Theory, InlineData("A3"), InlineData("A1")]
    public void Wedges_and_brackets_are_drawn_true_to_scale(string paper)
    {
        var rod = Rod(Full("balustrade"), paper);
        foreach (var sheet in Sheets(rod).Where(s => s.Name.StartsWith("small", StringComparison.Ordinal) || s.Name.Contains("bracket", StringComparison.Ordinal)))
        {
            var drawn = FlatMarks.Of(sheet.Marks).Select(m => m.Mark).OfType<StrokeMark>().Where(s => s.Layer == Layer.OutlineToCut).GroupBy(s => s.Of!).ToList();
            Assert.NotEmpty(drawn);
            foreach (var views in drawn)
            {
                var part = rod.Stair.Kit.Find(views.Key);
                // One view is the face, the other as long as the face or the piece and as thick.
                Assert.Equal(2, views.Count());
                Assert.Equal(part.FaceSide.Outline.Area, views.First().Path.Area * sheet.Scale.Ratio * sheet.Scale.Ratio, 1e-6 * part.FaceSide.Outline.Area + 1e-6);
            }
        }
    }

    /// <summary>One carriage stands in the middle between the strings.</summary>
    [Fact]
    public void A_carriage_is_told_across_and_with_its_bevels()
    {
        var job = Samples.Job("straight-flight") with { Width = 1100, Carriage = new() };
        var rod = Rod(job);
        var (kit, plan) = (rod.Stair.Kit, rod.Stair.Plan);
        var carriage = Assert.Single(kit.Parts, p => p.Kind == PartKind.Carriage);
        Assert.Equal(plan.ClearWidth / 2, CarriageSheets.Inner(rod.Stair, carriage).Across, 1e-6);
        var pitch = plan.Pitch.Degrees;
        // The foot stands level on the floor, the head plumb against the trimmer.
        Assert.True(CarriageEnd.Of(carriage, head: false).IsLevel);
        Assert.Equal(90 - pitch, CarriageEnd.Of(carriage, head: false).OffSquare.Degrees, 1e-9);
        Assert.Equal(pitch, CarriageEnd.Of(carriage, head: true).OffSquare.Degrees, 1e-9);
        Assert.False(CarriageEnd.Of(carriage, head: true).IsLevel);
        Assert.Contains($"head cut plumb, {Number.Print(pitch, 2)}° off square", Words(CarriageSheets.Make(rod)), StringComparison.Ordinal);
    }

    /// <summary>Flights that run beside one another have strings of their own: no carriage is further from its own than the flight is wide.</summary>
    [Theory, InlineData("open-well"), InlineData("dog-leg"), InlineData("double-kite")]
    public void A_carriage_is_told_from_the_string_of_its_own_flight(string sample)
    {
        var stair = Stair.SetOut(Full(sample)).Value!;
        var carriages = stair.Kit.Parts.Where(p => p.Kind == PartKind.Carriage).ToList();
        Assert.NotEmpty(carriages);
        foreach (var carriage in carriages)
        {
            var (beside, across) = CarriageSheets.Inner(stair, carriage);
            Assert.True(beside.Site.Inner);
            Assert.InRange(across, 0, stair.Plan.ClearWidth);
        }
        // One string for each flight that has carriages.
        Assert.Equal(carriages.Select(c => c.FaceSide.Frame.U is var u ? (Math.Round(u.X, 6), Math.Round(u.Y, 6)) : default).Distinct().Count(), carriages.Select(c => CarriageSheets.Inner(stair, c).String.Part.Id).Distinct().Count());
    }

    /// <summary>Brackets stand a going apart: along the board a going over the cosine of the pitch.</summary>
    [Theory, InlineData(Hand.Left), InlineData(Hand.Right)]
    public void Brackets_are_marked_along_a_carriage(Hand hand)
    {
        var job = Full("left-kite-low");
        var stair = Stair.SetOut(job with { Layout = job.Layout with { Hand = hand } }).Value!;
        foreach (var carriage in stair.Kit.Parts.Where(p => p.Kind == PartKind.Carriage))
        {
            var view = new CarriageView(stair, carriage);
            Assert.Equal(view.Brackets.Count, view.Stations.Count);
            for (var i = 1; i < view.Stations.Count; i++) Assert.Equal(stair.Plan.Going / stair.Plan.Pitch.Cosine, view.Stations[i].X - view.Stations[i - 1].X, 1e-6);
            Assert.All(view.Stations, s => Assert.Equal(carriage.Blank.Width, s.Y, 1e-6));
        }
    }

    [Fact]
    public void The_other_hand_prints_the_same_figures()
    {
        var job = Full("balustrade");
        Assert.Equal(Figures(job), Figures(job with { Layout = job.Layout with { Hand = Hand.Right }, Sides = new(job.Sides.Right, job.Sides.Left) }));

        // Along a board from its left end figures change places; what is told of small pieces does not.
        static List<string> Figures(Job job) => [.. SmallPieceSheets.Make(Rod(job)).SelectMany(s => Texts(s.Marks)).Where(t => !t.Contains("hand", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
    }
}
