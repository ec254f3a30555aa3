using CsCheck;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Properties;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Tests.Pictures;

public sealed class FindingPlaceTests
{
    [Fact]
    public void Every_breach_and_every_advice_of_a_stair_has_a_place_that_exists() => Generated.Jobs.Holds(Check, iter: 400, threads: 1);

    [Fact]
    public void So_have_those_of_poor_practice() =>
        Generated.Jobs.Select(Gen.Int[40, 80], Gen.Int[180, 250], Gen.Int[25, 60], Gen.Int[10, 40]).Holds((job, newel, width, margin, thick) => Check(job with
        {
            Practice = job.Practice with
            {
                Newel = newel, Margin = margin, Tread = thick, WallString = job.Practice.WallString with { Width = width }, NewelString = job.Practice.NewelString with { Width = width },
                Tenon = job.Practice.Tenon with { Peg = 16 }, RiserEnd = 8,
            },
        }), iter: 400, threads: 1);

    [Theory]
    [InlineData("practice.newel", PartKind.Newel)]
    [InlineData("practice.newelString.width", PartKind.NewelString)]
    [InlineData("practice.wallString.width", PartKind.WallString)]
    [InlineData("practice.floorBoards", PartKind.NosingPiece)]
    public void A_field_marks_all_pieces_it_decides(string field, PartKind kind)
    {
        var stair = Set.Sample("left-kite-low");
        Assert.Equal(stair.Kit.Parts.Where(p => p.Kind == kind).Select(p => p.Id), FindingPlaces.Of(stair, Found(field)));
    }

    [Fact]
    public void Pieces_steps_and_flights_are_found_by_their_names()
    {
        var stair = Set.Sample("left-kite-low");
        var board = stair.Plan.Strings.First(s => s.Name == "wall string, upper flight");
        Assert.Equal([board.Id], FindingPlaces.Of(stair, Found(board.Name)));
        Assert.Equal(["newel-turn"], FindingPlaces.Of(stair, Found("turn newel")));
        Assert.Equal(["tread-4", "riser-4"], FindingPlaces.Of(stair, Found("step 4")));
        Assert.Equal(["riser-4"], FindingPlaces.Of(stair, Found("riser 4")));
        Assert.Equal(["tread-3", "riser-3", "tread-4", "riser-4", "tread-5", "riser-5", "riser-6"], FindingPlaces.Of(stair, Found("layout.turn")));
        var straight = Assert.Single(FindingPlaces.Of(stair, Found("straight steps")), id => id.StartsWith("tread-", StringComparison.Ordinal));
        Assert.Equal(PartKind.Tread, stair.Kit.Find(straight).Kind);
        var landing = Set.Sample("quarter-landing");
        Assert.Equal(Enumerable.Range(7, 9).Select(ThingId.Riser), FindingPlaces.Of(landing, Found("upper flight")));
        Assert.Equal(["nosing-6", "riser-6"], FindingPlaces.Of(landing, Found("landing, way in")));
    }

    [Fact]
    public void A_finding_of_some_strings_marks_only_those_it_names()
    {
        var stair = Set.Sample("left-kite-low");
        var string1 = stair.Kit.Parts.First(p => p.Mark == "F1");
        Assert.Equal([string1.Id], FindingPlaces.Of(stair, new("RW4002", Severity.Breach, "practice.margin", "F1: a nosing comes within 20 of the upper edge", "")));
    }

    [Fact]
    public void What_is_no_place_on_the_stair_marks_nothing()
    {
        var stair = Set.Sample("left-kite-low");
        Assert.Empty(FindingPlaces.Of(stair, Found("survey.floorToFloor")));
        Assert.Empty(FindingPlaces.Of(stair, Found("step 99")));
        Assert.Empty(FindingPlaces.Of(stair, Found("")));
    }

    private static Finding Found(string where) => new("RW9999", Severity.Breach, where, "told here", "");

    private static void Check(Job job)
    {
        if (Stair.SetOut(job).Value is not { } stair) return;
        var known = stair.Kit.Parts.Select(p => p.Id).Concat(stair.Plan.RiserLines.Select(r => ThingId.Riser(r.Number))).ToHashSet();
        foreach (var finding in stair.Findings.Where(f => f.Severity >= Severity.Advice))
        {
            var places = FindingPlaces.Of(stair, finding);
            Assert.True(places.Length > 0, $"{finding.Code} {finding.Where}");
            Assert.All(places, id => Assert.Contains(id, known));
            Assert.Equal(places.Length, places.Distinct().Count());
        }
    }
}
