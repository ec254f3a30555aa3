using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Rod.Sheets;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

public sealed class SheetsReadTests
{
    public static TheoryData<string, string, string?> Prints()
    {
        var all = new TheoryData<string, string, string?>();
        foreach (var name in Samples.Names)
        {
            foreach (var paper in new[] { "A4", "A3", "A2", "A1", "610", "1800x1200" })
                foreach (var scale in new[] { null, "1:1", "1:5", "1:10" }) all.Add(name, paper, scale);
        }
        return all;
    }

    [Theory, MemberData(nameof(Prints))]
    public void Nothing_overlaps_anything_on_any_sheet_of_a_sample(string name, string paper, string? scale) => AssertReads(Rods.Sample(name, paper, scale));

    [Fact]
    public void Nothing_overlaps_anything_on_sheets_of_made_up_jobs() => Generated.Jobs
        .Select(Gen.OneOf("A4", "A3", "A2", "A1"), Gen.OneOf("", "1:5", "1:10"))
        .Holds(t =>
        {
            if (Stair.SetOut(t.Item1).Value is not null) AssertReads(Rods.Of(t.Item1, t.Item2, t.Item3.Length > 0 ? t.Item3 : null));
        }, iter: 150);

    [Fact]
    public void Nothing_overlaps_anything_on_sheets_of_made_up_rooms() => Each(Rooms.Jobs, Gen.OneOf("A4", "A3", "A2", "A1"), Gen.OneOf("", "1:10", "1:20"), 80, rod =>
        AssertReads(rod, [.. RoomSheets.Make(rod), .. SectionSheets.Make(rod), .. PlanSheets.Make(rod)]));

    [Fact]
    public void Nothing_overlaps_anything_on_sheets_of_stairs_of_several_turns() =>
        Each(Generated.Courses, Gen.OneOf("A4", "A3", "A1"), Gen.OneOf("", "1:10"), 60, rod => AssertReads(rod));

    /// <summary>The same jobs every time, so that what is found wrong is found again.</summary>
    private static void Each(Gen<Job> jobs, Gen<string> papers, Gen<string> scales, int count, Action<RodJob> check) => Parallel.For(1, 1 + count, i =>
    {
        var (job, paper, scale) = jobs.Select(papers, scales).Generate(new PCG((uint)i, 20261126), null, out _);
        if (Stair.SetOut(job).Value is not null) check(Rods.Of(job, paper, scale.Length > 0 ? scale : null));
    });

    [Theory, MemberData(nameof(Prints))]
    public void Sheets_have_names_of_their_own_and_drawings_that_fit(string name, string paper, string? scale)
    {
        var rod = Rods.Sample(name, paper, scale);
        var sheets = StairSheets.Make(rod);
        var set = new SheetSet("set", "Set", [.. Cover.Make(rod, sheets), .. sheets]);
        Assert.All(set.Sheets, s => Assert.True(s.TrueSize || !s.Scale.IsFull));
        Assert.Contains(sheets, s => s.Name == "plan");
    }

    private static void AssertReads(RodJob rod)
    {
        var sheets = StairSheets.Make(rod);
        AssertReads(rod, [.. Cover.Make(rod, sheets), .. sheets]);
    }

    private static void AssertReads(RodJob rod, IEnumerable<Sheet> sheets)
    {
        foreach (var sheet in sheets)
        {
            var faults = SheetCheck.Overlaps(sheet);
            Assert.True(faults.Count == 0, $"{rod.Stair.Job.Title}, {sheet.Name} on {sheet.Paper.Name}: {string.Join("; ", faults.Select(f => $"{f.Message} at {f.Where.Centre}"))}");
            foreach (var (mark, _) in FlatMarks.Of(sheet.Marks))
                if (mark is TextMark text) Assert.DoesNotContain(sheet.Reserved, box => box.Overlaps(text.Bounds, 0.1));
        }
    }
}
