using System.Globalization;
using Rodwright.Joinery.Parts;
using Rodwright.Geometry;
using Rodwright.Rod.Tables;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Tables;

public sealed class TableTests
{
    public static TheoryData<string> AllSamples => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void The_parts_list_counts_every_part_once(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var rows = PartsList.Rows(stair);
        Assert.Equal(stair.Kit.Parts.Length, rows.Sum(r => int.Parse(r[2], CultureInfo.InvariantCulture)));
        Assert.All(rows, r => Assert.Equal(PartsList.Heading.Count, r.Count));
    }

    [Fact]
    public void Equal_treads_are_one_line_and_those_at_newels_are_not()
    {
        var groups = EqualParts.Of(RodJobs.Stair("left-kite-low").Kit.Parts.Where(p => p.Kind == PartKind.Tread));
        Assert.Contains(groups, g => g.Marks == "T7 to T11");
        Assert.Contains(groups, g => g.Marks == "T1");
        Assert.Contains(groups, g => g.Marks == "T12");
    }

    [Fact]
    public void Marks_of_a_broken_run_are_told_apart()
    {
        var risers = RodJobs.Stair("left-kite-low").Kit.Parts.Where(p => p.Kind == PartKind.Riser).ToList();
        var some = risers.Where(p => p.Step is 2 or 7 or 8 or 9 or 11 or 12);
        Assert.Equal("R2, R7 to R9, R11, R12", new EqualParts([.. some]).Marks);
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Both_ways_of_measuring_a_string_find_the_same_place(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        foreach (var board in kit.Strings)
        {
            var list = OrdinateList.Of(board.Part, kit);
            // The board is the development turned (and for a string that climbs to the left, seen the other way): distances between points stay.
            var (first, rest) = (list[0], list.Skip(1).ToList());
            Assert.NotEmpty(rest);
            foreach (var o in rest)
            {
                var onBoard = new Point2(o.Along, o.Across).DistanceTo(new(first.Along, first.Across));
                var onDevelopment = new Point2(o.Station!.Value, o.Height!.Value).DistanceTo(new(first.Station!.Value, first.Height!.Value));
                Assert.Equal(onDevelopment, onBoard, 6);
            }
            foreach (var o in list.Where(o => o.Point == "pitch point"))
            {
                var riser = int.Parse(o.Feature["riser ".Length..], CultureInfo.InvariantCulture);
                Assert.Equal(riser * kit.Plan.Rise, o.Height!.Value, 6);
            }
            foreach (var o in list.Where(o => o.Feature.Contains("edge", StringComparison.Ordinal) && !o.Point.StartsWith("centre", StringComparison.Ordinal)))
            {
                var onFace = board.Part.Blank.Corner + o.Along * board.Part.Blank.Grain + o.Across * board.Part.Blank.Grain.Left;
                Assert.True(board.Part.FaceSide.Outline.DistanceTo(onFace) < Tolerance.Joint, $"{o.Mark} {o.Feature} {o.Point} is not on the board's outline");
            }
        }
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Newel_heights_count_from_the_foot_and_agree_with_the_treads(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        foreach (var part in kit.Parts.Where(p => p.Kind == PartKind.Newel))
        {
            foreach (var o in OrdinateList.Of(part, kit).Where(o => o.Feature.StartsWith("housing of tread", StringComparison.Ordinal) && o.Point == "top, right"))
            {
                var step = int.Parse(o.Feature["housing of tread ".Length..], CultureInfo.InvariantCulture);
                Assert.Equal(step * kit.Plan.Rise, o.Height!.Value, 3);
                Assert.Equal(o.Height!.Value - part.FaceSide.Frame.Origin.Z, o.Across, 6);
            }
        }
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Every_newel_ordinate_lies_on_its_face(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        foreach (var part in kit.Parts.Where(p => p.Kind == PartKind.Newel))
            Assert.All(OrdinateList.Of(part, kit), o => Assert.True(o.Along >= 0 && o.Along <= part.Blank.Width && o.Across >= 0 && o.Across <= part.Blank.Length, $"{o.Mark} {o.Face} {o.Feature}: {o.Along}, {o.Across}"));
    }

    [Fact]
    public void Corners_of_a_tread_are_lettered_from_the_left_end_of_its_nosing()
    {
        foreach (var part in RodJobs.Stair("right-kite-top").Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread))
        {
            var corners = TreadCorners.Of(part);
            Assert.Equal(part.FaceSide.Outline.Vertices.Length, corners.Length);
            Assert.Equal(0, corners[0].Y, 6);
            Assert.Equal(0, corners[1].Y, 6); // B is the nosing's other end
            Assert.True(corners[1].X > corners[0].X);
        }
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void A_rail_a_baluster_or_a_wedge_is_measured_from_the_left_end_and_the_lower_edge_of_its_board(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        foreach (var part in kit.Parts.Where(p => p.Faces.Length == 1 && p.Kind is not (PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece or PartKind.WallString or PartKind.NewelString or PartKind.Newel)))
        {
            var corners = OrdinateList.Of(part, kit).Where(o => o.Point.StartsWith("corner", StringComparison.Ordinal)).ToList();
            Assert.All(corners, o => Assert.True(o.Along > -Tolerance.Joint && o.Along < part.Blank.Length + Tolerance.Joint && o.Across > -Tolerance.Joint && o.Across < part.Blank.Width + Tolerance.Joint,
                $"{o.Mark} {o.Point}: {o.Along}, {o.Across} on a board {part.Blank.Length} by {part.Blank.Width}"));
        }
    }
}
