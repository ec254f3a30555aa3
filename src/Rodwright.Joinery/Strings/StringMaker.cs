using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>Makes the string boards of a development: outline, blank, cuts, part (left-hand frame).</summary>
internal static class StringMaker
{
    public static IEnumerable<StringBoard> Make(
        StairPlan plan, Development development, StringEdges edges, IReadOnlyDictionary<string, ImmutableArray<StringHousing>> housings,
        ImmutableArray<StringTenon> tenons)
    {
        for (var i = 0; i < development.Sites.Length; i++)
        {
            var site = development.Sites[i];
            var next = i + 1 < development.Sites.Length ? development.Sites[i + 1] : null;
            var own = tenons.Where(t => ReferenceEquals(t.Site, site)).ToImmutableArray();
            var (upper, lower) = EdgesOf(plan, site, edges);
            var outline = Outline(plan, site, upper, lower, own);
            var mine = housings[site.Id];
            var band = BoardBand.Lay(outline, site.Width, site.Thickness, Directions(development, outline));
            yield return new(site, development.PitchPoints, development.Margin, upper, lower, outline, edges.Easings, edges.LeastWidth, mine, own,
                band.Outline, Part(plan, site, i > 0 ? development.Sites[i - 1] : null, next, outline, upper, lower, band, mine, own));
        }
    }

    /// <summary>The stretch of the development's edges that belongs to one board, its corner ends and level head added.</summary>
    private static (Path2 Upper, Path2 Lower) EdgesOf(StairPlan plan, StringSite site, StringEdges edges)
    {
        var practice = plan.Job.Practice;
        var (low, high) = (site.Lower.Kind == StringEndKind.CornerLetIn, site.Upper.Kind == StringEndKind.CornerThrough);
        var (upper, lower) = (Stretch(edges.Upper), Stretch(edges.Lower));
        if (site.Upper.Kind == StringEndKind.Head)
            upper.Add(new(new(upper[^1].At.X + practice.HeadLevel, upper[^1].At.Y)));
        return (new(upper, false), new(lower, false));

        // At a corner it runs through to the wall behind, its edges level past the corner, where the other board covers it; the other board is let into it.
        List<Vertex2> Stretch(Path2 edge)
        {
            var (from, to) = (low ? site.Lower.At : edge.Vertices[0].At.X, high ? site.Upper.At : edge.Vertices[^1].At.X);
            List<Vertex2> stretch = low || high ? [.. GraphCut.Between(edge, from, to).Vertices] : [.. edge.Vertices];
            if (high) stretch.Add(new(new(to + site.Thickness, stretch[^1].At.Y)));
            // Of a dovetailed end only the tails are let in.
            if (low && practice.CornerJoint != CornerJoint.Dovetailed) stretch.Insert(0, new(new(from - practice.Corner, stretch[0].At.Y)));
            return stretch;
        }
    }

    private static Path2 Outline(StairPlan plan, StringSite site, Path2 upper, Path2 lower, ImmutableArray<StringTenon> tenons)
    {
        var vertices = new List<Vertex2>();
        vertices.AddRange(lower.Vertices);
        if (site.Upper.Kind == StringEndKind.Head)
        {
            var seat = site.Upper.Level - plan.Job.Practice.FloorBoards;
            vertices.Add(new(new(lower.Vertices[^1].At.X, seat)));
            vertices.Add(new(new(upper.Vertices[^1].At.X, seat)));
        }
        if (tenons.FirstOrDefault(t => t.IsUpper) is { } up) vertices.AddRange(TenonEnd(up).Select(p => new Vertex2(p)));
        vertices.AddRange(upper.Reversed().Vertices);
        if (site.Lower.Kind == StringEndKind.CornerLetIn && CornerDovetail.Of(plan.Job.Practice, lower.Vertices[0].At.Y, upper.Vertices[0].At.Y) is { } tails)
            vertices.AddRange(tails.End(site.Lower.At).Select(p => new Vertex2(p)));
        if (tenons.FirstOrDefault(t => !t.IsUpper) is { } down) vertices.AddRange(TenonEnd(down).Reverse().Select(p => new Vertex2(p)));
        return new(Clean(vertices), true);
    }

    /// <summary>The tenons' outline at an end, from the lower edge up.</summary>
    private static IEnumerable<Point2> TenonEnd(StringTenon t)
    {
        var haunch = t.Shoulder + t.Points * t.Haunch;
        var (low, high) = (t.Bottom + t.Third, t.Top - t.Third);
        return
        [
            new(t.Shoulder, t.Bottom), new(t.Tip, t.Bottom), new(t.Tip, low), new(haunch, low),
            new(haunch, high), new(t.Tip, high), new(t.Tip, t.Top), new(t.Shoulder, t.Top),
        ];
    }

    private static List<Vertex2> Clean(List<Vertex2> vertices)
    {
        for (var i = vertices.Count - 1; i >= 0; i--)
        {
            var next = vertices[(i + 1) % vertices.Count];
            if (vertices[i].At.IsSame(next.At) && vertices[i].Bulge == 0) vertices.RemoveAt(i);
        }
        return vertices;
    }

    /// <summary>Directions to try for the board: the straight flight's pitch first, then every other piece of the edges, then the chord.</summary>
    private static List<Vector2> Directions(Development development, Path2 outline)
    {
        var margin = development.Margin;
        var box = outline.Bounds;
        var pieces = Enumerable.Range(0, development.Tapered.Length)
            .Where(i => margin[i].X < box.MaxX && margin[i + 1].X > box.MinX)
            .OrderBy(i => development.Tapered[i])
            .Select(i => (margin[i + 1] - margin[i]).Unit).ToList();
        if (pieces.Count == 0) pieces.Add((margin[^1] - margin[0]).Unit);
        var (from, to) = (Math.Max(margin[0].X, box.MinX), Math.Min(margin[^1].X, box.MaxX));
        if (to - from > 1) pieces.Add((OnMargin(margin, to) - OnMargin(margin, from)).Unit);
        return pieces;
    }

    private static Point2 OnMargin(ImmutableArray<Point2> margin, double s) => new(s, GraphCut.HeightAt(Path2.Polyline(margin), s));

    private static Part Part(
        StairPlan plan, StringSite site, StringSite? before, StringSite? next, Path2 outline, Path2 upper, Path2 lower, Blank band,
        ImmutableArray<StringHousing> housings, ImmutableArray<StringTenon> tenons)
    {
        var practice = plan.Job.Practice;
        // Looking at the visible face, an inner (left-hand) string climbs to the right and an outer one to the left.
        var flips = !site.Inner;
        var origin = site.Face.Through;
        var along = Vector3.Level(site.Face.Along);
        var frame = new Frame3(new(origin.X, origin.Y, 0), flips ? -along : along, Vector3.Up);
        var cuts = new List<Cut>();
        foreach (var h in housings)
        {
            cuts.Add(new($"housing-{h.Piece}", CutKind.Housing, 0, On(h.Shape), h.Depth, $"{h.Piece}/{site.Id}",
                ReferenceEquals(h.Seat, h.Shape) ? null : On(h.Seat)));
        }
        var dovetails = site.Upper.Kind == StringEndKind.CornerThrough ? CornerDovetail.Of(practice, lower.Vertices[^1].At.Y, upper.Vertices[^1].At.Y) : null;
        if (dovetails is not null)
        {
            foreach (var (tail, i) in dovetails.Tails.Select((t, i) => (t, i)))
                cuts.Add(new($"socket-{Number.Print(i + 1, 0)}", CutKind.Dovetail, 1, InEnd(dovetails.Socket(tail)), site.Thickness, $"{next!.Id}/{site.Id}"));
        }
        else if (site.Upper.Kind == StringEndKind.CornerThrough)
        {
            var c = site.Upper.At;
            // A tongue stands in the middle of the other board's end.
            var (near, far) = practice.CornerJoint == CornerJoint.Tongued ? ((site.Thickness - practice.Tongue) / 2, (site.Thickness + practice.Tongue) / 2) : (0, site.Thickness);
            cuts.Add(new("corner", CutKind.CornerHousing, 0,
                On(Path2.Rectangle(c + near, lower.Vertices[^1].At.Y, c + far, upper.Vertices[^1].At.Y)), practice.Corner,
                $"{next!.Id}/{site.Id}"));
        }
        if (before is not null && practice.CornerJoint == CornerJoint.Tongued)
        {
            var (c, joint) = (site.Lower.At, $"{site.Id}/{before.Id}");
            var end = On(Path2.Rectangle(c - practice.Corner, lower.Vertices[0].At.Y, c, upper.Vertices[0].At.Y));
            cuts.Add(new("tongue-front", CutKind.Cheek, 0, end, (site.Thickness - practice.Tongue) / 2, joint));
            cuts.Add(new("tongue-back", CutKind.Cheek, 0, end, site.Thickness, joint) { Beneath = (site.Thickness + practice.Tongue) / 2 });
        }
        foreach (var t in tenons)
        {
            var joint = $"{site.Id}/{t.Newel}";
            var (a, b) = (Math.Min(t.Shoulder, t.Tip), Math.Max(t.Shoulder, t.Tip));
            cuts.Add(new($"cheek-{t.Newel}", CutKind.TenonCheek, 0, On(Path2.Rectangle(a, t.Bottom, b, t.Top)), site.Thickness - t.Thickness, joint));
            foreach (var z in t.PegHeights)
            {
                var s = t.Shoulder + t.Points * (t.PegBack - t.Practice.Draw);
                cuts.Add(new($"peg-{t.Newel}-{(z > (t.Bottom + t.Top) / 2 ? "upper" : "lower")}", CutKind.Bore, 0,
                    On(Path2.Circle(new(s, z), t.Practice.Peg / 2)), site.Thickness, joint, Note: $"draw {plan.Units.Print(t.Practice.Draw)} nearer the shoulder"));
            }
        }
        return new()
        {
            Id = site.Id, Name = site.Name, Mark = site.Mark, Kind = site.IsWall ? PartKind.WallString : PartKind.NewelString, Material = practice.Timber,
            Blank = flips ? band.Mirrored(0) : band,
            Faces = dovetails is null ? [new("face side", frame, On(outline), site.Thickness)] : [new("face side", frame, On(outline), site.Thickness), End()],
            Cuts = [.. cuts],
        };

        Path2 On(Path2 path) => flips ? path.Mirrored() : path;

        // As one looks at the lower string's end, its face is on the left where it climbs to the right.
        Path2 InEnd(Path2 path) => flips ? path.Mirrored() : path;

        PartFace End()
        {
            var (box, end) = (outline.Bounds, site.Face.At(site.Upper.At + site.Thickness));
            return new("end", new(new(end.X, end.Y, 0), Vector3.Up.Cross(along), Vector3.Up), InEnd(Path2.Rectangle(0, box.MinY, site.Thickness, box.MaxY)), box.Width);
        }
    }
}
