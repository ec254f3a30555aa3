using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Geometry.Solids.Sight;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Assembly;
using Rodwright.Rod.Pictorial;
using Xunit;

namespace Rodwright.Rod.Tests.Pictorial;

/// <summary>Pictures of samples, against sight worked out dot by dot.</summary>
public class PictorialTests
{
    public static TheoryData<string, string> All => RodJobs.Everything("A4", "A3", "A1", "610");

    [Theory, MemberData(nameof(All))]
    public void Nothing_overlaps_on_a_sheet_of_pictures(string sample, string paper)
    {
        var rod = RodJobs.Of(sample, paper);
        List<Sheet> sheets = [.. PictorialSheets.Whole(rod), .. PictorialSheets.Newels(rod), .. AssemblySheets.Make(rod)];
        var faults = sheets.SelectMany(s => SheetCheck.Overlaps(s).Select(f => $"{s.Name}: {f.Message} at {f.Where}")).ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} faults\n" + string.Join('\n', faults.Take(40)));
        Assert.All(sheets.SelectMany(s => s.Marks).OfType<GroupMark>(), g => Assert.NotNull(rod.Stair.Kit.Parts.FirstOrDefault(p => p.Id == g.Of)));
    }

    /// <summary>Every stretch has its middle and two more points looked at along the line of sight, through all triangles of all parts.</summary>
    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("bull-nose")]
    [InlineData("open-well")]
    public void What_is_drawn_is_what_is_seen(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var solids = KitSolids.Of(stair.Kit, Picture.Chord).Select(s => s.InWorld).ToList();
        var view = Eyes.Whole(stair);
        var edges = HiddenLines.Of(solids, view, withHidden: true);
        var triangles = solids.SelectMany(s => s.Triangles().Chunk(3).Select(t => (A: s.Vertices[t[0]], B: s.Vertices[t[1]], C: s.Vertices[t[2]])))
            .Select(t => (Flat: (A: view.At(t.A), B: view.At(t.B), C: view.At(t.C)), Near: (A: view.Nearness(t.A), B: view.Nearness(t.B), C: view.Nearness(t.C))))
            .Where(t => Math.Abs((t.Flat.B - t.Flat.A).Cross(t.Flat.C - t.Flat.A)) > 1e-9).ToArray();
        // The edge's own depth: of the vertices' straight lines that fall on the point, the ones of its solid.
        var (wrong, looked) = (new List<string>(), 0);
        foreach (var edge in edges.Where((e, i) => e.Length > 1 && i % 5 == 0))
        {
            foreach (var share in (double[])[0.31, 0.5, 0.83])
            {
                var at = edge.From.Towards(edge.To, share);
                // A hair to either side of the line: seen means that at one side at least nothing lies before the solid's own surface there or its absence.
                var side = 0.03 * (edge.To - edge.From).Unit.Left;
                var own = Depths(solids[edge.Solid], view, at, 0.04).ToList();
                if (own.Count == 0) continue;
                looked++;
                var before = new[] { at + side, at - side }.Select(p => Nearest(triangles, p)).ToList();
                if (edge.IsSeen && before.Min() > own.Max() + 1) wrong.Add($"{stair.Kit.Parts[edge.Solid].Id} seen at {at} but {Number.Print(before.Min() - own.Max(), 2)} behind");
                if (!edge.IsSeen && before.Max() < own.Min() - 1) wrong.Add($"{stair.Kit.Parts[edge.Solid].Id} hidden at {at} but nothing before it");
            }
        }
        Assert.True(looked > 1000, $"{looked} points");
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {looked}\n" + string.Join('\n', wrong.Take(20)));
    }

    private static double Nearest(((Point2 A, Point2 B, Point2 C) Flat, (double A, double B, double C) Near)[] triangles, Point2 p)
    {
        var nearest = double.NegativeInfinity;
        foreach (var (f, n) in triangles)
        {
            var whole = (f.B - f.A).Cross(f.C - f.A);
            var (b, c) = ((p - f.A).Cross(f.C - f.A) / whole, (f.B - f.A).Cross(p - f.A) / whole);
            if (b >= 0 && c >= 0 && b + c <= 1) nearest = Math.Max(nearest, n.A + b * (n.B - n.A) + c * (n.C - n.A));
        }
        return nearest;
    }

    /// <summary>How near the eye the drawn edges of a solid are that pass a point of the picture.</summary>
    private static IEnumerable<double> Depths(Solid solid, ParallelView view, Point2 at, double within)
    {
        foreach (var loop in solid.Faces.SelectMany(f => f.Loops))
        {
            for (int i = loop.Length - 1, j = 0; j < loop.Length; i = j++)
            {
                var (a, b) = (view.At(solid.Vertices[loop[i]]), view.At(solid.Vertices[loop[j]]));
                var length = a.DistanceTo(b);
                if (length < 1e-6) continue;
                var unit = 1 / length * (b - a);
                var along = unit.Dot(at - a);
                if (along < 0 || along > length || Math.Abs(unit.Cross(at - a)) > within) continue;
                yield return view.Nearness(solid.Vertices[loop[i]]) + along / length * (view.Nearness(solid.Vertices[loop[j]]) - view.Nearness(solid.Vertices[loop[i]]));
            }
        }
    }
}
