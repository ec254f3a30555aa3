using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Timber;

public class BoardPlanTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    private static Kit Kit(string name) => Stair.SetOut(JobFile.Read(Samples.Text(name)).Value!).Value!.Kit;

    private static Shop Usual(Kit kit) => UsualShop.For(kit.Plan.Job);

    private static BoardPlan Plan(string name)
    {
        var kit = Kit(name);
        return BoardPlan.Of(CuttingList.Of(kit, Usual(kit)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_is_planned_and_proven_best(string name)
    {
        var plan = Plan(name);
        Assert.True(plan.IsProven, string.Join("; ", plan.Sections.Select(s => $"{s.Material} {s.Thickness}: {s.Claim}")));
        Assert.Equal(plan.Cost, plan.Bound, 1e-6);
        Assert.Empty(plan.Findings);
        Assert.Empty(plan.List.Findings);
        Faultless(plan);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_part_is_on_the_list_with_wood_enough(string name)
    {
        var kit = Kit(name);
        var list = CuttingList.Of(kit, Usual(kit));
        Assert.Equal(kit.Parts.Select(p => p.Id), list.Pieces.Select(p => p.Part.Id));
        foreach (var piece in list.Pieces)
        {
            Assert.All(piece.Woods, w => Assert.True(w.SawnLength >= w.Length - 1e-6 && w.SawnWidth >= w.Width - 1e-6 && w.SawnThickness >= w.Thickness - 0.5, w.ToString()));
            if (piece.Stock != StockKind.Board) continue;
            // The strips make up the whole width, or the layers the whole thickness; jointed-up pieces come on top.
            var own = piece.Woods.Where(w => !w.Id.Contains('+')).ToList();
            Assert.Equal(piece.Part.Blank.Width * piece.Part.Blank.Thickness, own.Sum(w => w.Width * w.Thickness), 1e-6);
            Assert.True(piece.Woods.Length - own.Count >= piece.Part.Blank.JointedUp.Length);
        }
    }

    [Fact]
    public void Strips_of_a_tapered_tread_are_as_long_as_the_tread_is_where_they_lie()
    {
        var list = CuttingList.Of(Kit("left-kite-low"), Usual(Kit("left-kite-low")));
        var tread = list.Pieces.First(p => p.Part.Kind == PartKind.TaperedTread && p.Woods.Length >= 3);
        Assert.True(tread.Woods[0].Length > tread.Woods[^1].Length);
        Assert.Equal(tread.Part.Blank.Length, tread.Woods.Max(w => w.Length), 1);
        // No strip is shorter than the outline anywhere in its band, sampled line by line.
        var ring = tread.Part.FaceSide.Outline.Flattened(0.05).Select(tread.Part.Blank.OnBoard).ToList();
        for (var i = 0; i < tread.Woods.Length; i++)
        {
            var (from, to) = (tread.Part.Blank.Width * i / tread.Woods.Length, tread.Part.Blank.Width * (i + 1) / tread.Woods.Length);
            var band = ring.Where(p => p.Y >= from && p.Y <= to).Select(p => p.X).ToList();
            if (band.Count > 0) Assert.True(band.Max() - band.Min() <= tread.Woods[i].Length + 0.1);
        }
    }

    [Fact]
    public void Offcuts_of_earlier_jobs_are_used_before_anything_is_bought_and_what_is_left_lies_on_the_rack()
    {
        var kit = Kit("straight-flight");
        var without = BoardPlan.Of(CuttingList.Of(kit, Usual(kit)));
        var rack = Usual(kit) with { Offcuts = [.. Enumerable.Range(1, 4).Select(i => new ShopOffcut { Id = $"K{i}", Material = "redwood", Thickness = 25, Width = 150, Length = 2700 })] };
        var with = BoardPlan.Of(CuttingList.Of(kit, rack));
        Assert.True(with.Cost < without.Cost);
        Assert.Contains(with.Boards, b => b.Offcut == "K1");
        Faultless(with);
        var after = Racks.After(with);
        Assert.DoesNotContain(after.Offcuts, o => with.Boards.Any(b => b.Offcut == o.Id));
        Assert.Equal(after.Offcuts.Length, after.Offcuts.Select(o => o.Id).Distinct().Count());
        Assert.All(with.Offcuts, o => Assert.True(o.Length >= rack.Saw.LeastOffcut));
        Assert.NotNull(ShopFile.Read(ShopFile.Write(after)).Value);
    }

    [Fact]
    public void Boards_that_are_counted_are_fewer_afterwards()
    {
        var kit = Kit("straight-flight");
        var shop = Usual(kit) with { Boards = [.. Usual(kit).Boards.Select(b => b with { Quantity = 4 })] };
        var plan = BoardPlan.Of(CuttingList.Of(kit, shop));
        Assert.Empty(plan.Findings);
        Faultless(plan);
        Assert.All(plan.Boards.Where(b => !plan.Sections.Any(s => s.IsSheet && s.Boards.Contains(b))).GroupBy(b => (b.Thickness, b.Width, b.Length)), g => Assert.InRange(g.Count(), 1, 4));
        var (before, after) = (shop.Boards.Sum(b => b.Lengths.Length * b.Quantity), Racks.After(plan).Boards.Sum(b => b.Lengths.Length * b.Quantity));
        Assert.Equal(plan.Sections.Where(s => !s.IsSheet).Sum(s => s.Boards.Length), before - after);
    }

    [Fact]
    public void A_timber_the_shop_has_not_got_is_told_once_for_each_size()
    {
        var kit = Kit("straight-flight");
        var list = CuttingList.Of(kit, UsualShop.Of("oak", "plywood"));
        Assert.NotEmpty(list.Findings);
        Assert.All(list.Findings, f => Assert.Equal("RW4301", f.Code));
        Assert.Empty(BoardPlan.Of(list).Sections.Where(s => s.Material == "redwood"));
    }

    [Fact]
    public void Boards_too_short_leave_pieces_uncut_and_say_which()
    {
        var kit = Kit("straight-flight");
        var shop = Usual(kit) with { Boards = [.. Usual(kit).Boards.Select(b => b with { Lengths = [2400] })] };
        var plan = BoardPlan.Of(CuttingList.Of(kit, shop));
        Assert.Contains(plan.Findings, f => f.Code == "RW4302" && f.Where.Contains('W', StringComparison.Ordinal));
        Faultless(plan);
    }

    [Fact]
    public void Wedges_pegs_and_blocks_are_counted_from_the_kit()
    {
        var kit = Kit("straight-flight");
        var counts = CuttingList.Of(kit, Usual(kit)).Counts;
        var strings = kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString).ToList();
        Assert.Equal(strings.Sum(s => s.Cuts.Count(c => c.Kind == CutKind.Bore)), counts["peg"]);
        var wedged = strings.SelectMany(s => s.Cuts).Count(c => c.Kind == CutKind.Housing && c.Seat is not null);
        Assert.True(wedged > 0);
        Assert.Equal(wedged, counts["tread-wedge"] + counts["riser-wedge"]);
        Assert.True(counts["glue-block"] >= 2 * kit.Parts.Count(p => p.Kind == PartKind.Tread));
    }

    [Fact]
    public void A_costing_adds_up_and_every_number_has_its_formula()
    {
        var costing = Costing.Of(Plan("straight-flight"));
        Assert.All(costing.Lines, l => Assert.False(string.IsNullOrWhiteSpace(l.Formula)));
        Assert.Equal(costing.Costs, costing.Lines.Where(l => l.Group != "total").Sum(l => l.Amount), 1e-6);
        Assert.Equal(costing.Costs, costing.Wood + costing.Fixings + costing.Work, 1e-6);
        Assert.Equal(costing.Price, costing.Costs * 1.2, 1e-6);
        Assert.Equal(costing.Work, costing.Minutes / 60 * 40, 1e-6);
    }

    [Fact]
    public void The_same_list_has_the_same_plan()
    {
        var (one, other) = (Plan("double-kite"), Plan("double-kite"));
        Assert.Equal(one.Boards.SelectMany(b => b.Strips).SelectMany(s => s.Cuts).Select(c => (c.Wood.Id, c.From)), other.Boards.SelectMany(b => b.Strips).SelectMany(s => s.Cuts).Select(c => (c.Wood.Id, c.From)));
    }

    /// <summary>Goes over a plan with nothing of the planner's: every piece once, kerfs between, nothing over an edge.</summary>
    private static void Faultless(BoardPlan plan)
    {
        var saw = plan.List.Shop.Saw;
        var cut = plan.Boards.SelectMany(b => b.Strips).SelectMany(s => s.Cuts).Select(c => c.Wood).Concat(plan.Sections.SelectMany(s => s.Uncut)).ToList();
        Assert.Equal(plan.List.Woods.Select(w => w.Wood.Id).Order(), cut.Select(w => w.Id).Order());
        foreach (var board in plan.Boards)
        {
            var last = board.Strips[^1];
            Assert.True(last.From + last.Width <= board.Width + 0.1);
            for (var i = 1; i < board.Strips.Length; i++) Assert.True(board.Strips[i].From >= board.Strips[i - 1].From + board.Strips[i - 1].Width + saw.Kerf - 0.1);
            foreach (var strip in board.Strips)
            {
                var at = saw.EndTrim;
                for (var i = 0; i < strip.Cuts.Length; i++)
                {
                    var piece = strip.Cuts[i];
                    Assert.True(piece.To - piece.From >= piece.Wood.SawnLength - 1e-6);
                    Assert.True(piece.Wood.SawnWidth <= strip.Width + 0.1);
                    if (piece.From < at - 0.1) Apart(strip.Cuts[i - 1], piece, saw.Kerf);
                    at = Math.Max(at, piece.To + saw.Kerf);
                }
                Assert.True(at - saw.Kerf <= board.Length - saw.EndTrim + 0.1);
            }
        }
    }

    /// <summary>Two slanted pieces a kerf apart all along: every corner of either as far from the other.</summary>
    private static void Apart(PlannedCut one, PlannedCut other, double kerf)
    {
        Assert.False(one.Nested.IsEmpty || other.Nested.IsEmpty);
        var (a, b) = (Ring(one), Ring(other));
        Assert.All(a.Vertices, v => Assert.True(!b.Holds(v.At) && b.DistanceTo(v.At) >= kerf - 0.01, $"{one.Wood.Id} and {other.Wood.Id} are {b.DistanceTo(v.At)} apart"));
        Assert.All(b.Vertices, v => Assert.True(!a.Holds(v.At) && a.DistanceTo(v.At) >= kerf - 0.01, $"{one.Wood.Id} and {other.Wood.Id} are {a.DistanceTo(v.At)} apart"));

        static Path2 Ring(PlannedCut cut) => Path2.Polygon([.. cut.Nested.Select(p => new Point2(cut.From + p.X, p.Y))]);
    }
}
