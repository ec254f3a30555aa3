using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;

namespace Rodwright.Rod.Tables;

/// <summary>Ordinates of a string: on its development, and on the board from its left end and its lower edge, looking at its face.</summary>
internal static class StringOrdinates
{
    public static IEnumerable<Ordinate> Of(StringBoard board, Units units)
    {
        var part = board.Part;
        var site = board.Site;
        // The development runs up the stair; the face may run the other way.
        var sign = part.FaceSide.Frame.U.Dot(Vector3.Level(site.Face.Along)) > 0 ? 1 : -1;
        var span = board.Outline.Bounds;
        foreach (var pitch in board.PitchPoints.Where(p => p.At.X > span.MinX - 1 && p.At.X < span.MaxX + 1))
            yield return At($"riser {Number.Print(pitch.Riser, 0)}", "pitch point", pitch.At);
        foreach (var o in Edge("upper edge", board.UpperEdge)) yield return o;
        foreach (var o in Edge("lower edge", board.LowerEdge)) yield return o;
        foreach (var o in Rest(board)) yield return o;
        foreach (var housing in board.Housings)
        {
            var name = housing.Piece.Replace('-', ' ');
            if (housing.Nosing is { } nosing) yield return At($"housing of {name}", "nosing", nosing, housing.Depth);
            foreach (var o in Seat(housing)) yield return o;
            foreach (var o in Wedge(housing)) yield return o;
        }
        foreach (var (socket, i) in part.Cuts.Where(c => c.Kind == CutKind.Dovetail).Select((c, i) => (c, i)))
        {
            var heights = socket.Shape.Vertices.Select(v => v.At.Y).Order().ToList();
            foreach (var (name, z) in new[] { ("bottom at its depth", heights[0]), ("bottom at the face", heights[1]), ("top at the face", heights[2]), ("top at its depth", heights[3]) })
                yield return At($"socket {Number.Print(i + 1, 0)}", name, new(site.Upper.At, z), socket.Shape.Bounds.Width);
        }
        foreach (var tenon in board.Tenons)
        {
            var end = tenon.IsUpper ? "upper end" : "lower end";
            var cheek = site.Thickness - tenon.Thickness;
            yield return At($"tenons, {end}", "bottom at the shoulder", new(tenon.Shoulder, tenon.Bottom), cheek);
            yield return At($"tenons, {end}", "top at the shoulder", new(tenon.Shoulder, tenon.Top), cheek);
            yield return At($"tenons, {end}", "lower tenon, top at its end", new(tenon.Tip, tenon.Bottom + tenon.Third), cheek);
            yield return At($"tenons, {end}", "upper tenon, bottom at its end", new(tenon.Tip, tenon.Top - tenon.Third), cheek);
            foreach (var (z, i) in tenon.PegHeights.Select((z, i) => (z, i)))
                yield return At($"peg, {end}", i == 0 ? "lower, centre" : "upper, centre", new(tenon.Shoulder + tenon.Points * (tenon.PegBack - tenon.Practice.Draw), z), site.Thickness);
        }

        Ordinate At(string feature, string point, Point2 dev, double? depth = null)
        {
            var on = part.Blank.OnBoard(new(sign * dev.X, dev.Y));
            return new(part.Mark, part.Name, part.FaceSide.Looks, feature, point, on.X, on.Y, dev.X, dev.Y, depth);
        }

        IEnumerable<Ordinate> Edge(string feature, Path2 edge)
        {
            for (var i = 0; i < edge.Vertices.Length; i++)
            {
                var begins = edge.Vertices[i].Bulge != 0 && i < edge.EdgeCount;
                var ends = i > 0 && edge.Vertices[i - 1].Bulge != 0;
                var point = begins ? "easing begins" : ends ? "easing ends" : i == 0 ? "lower end" : i == edge.Vertices.Length - 1 ? "upper end" : "corner";
                yield return At(feature, point, edge.Vertices[i].At);
                if (!begins) continue;
                var arc = Arc2.FromBulge(edge.Vertices[i].At, edge.Vertices[i + 1].At, edge.Vertices[i].Bulge);
                yield return At(feature, $"centre, radius {units.Print(arc.Radius)}", arc.Centre);
            }
        }

        // Corners of the outline that belong to neither edge nor tenons: foot, head, seat.
        IEnumerable<Ordinate> Rest(StringBoard b)
        {
            foreach (var v in b.Outline.Vertices)
            {
                if (b.UpperEdge.Vertices.Concat(b.LowerEdge.Vertices).Any(e => e.At.IsSame(v.At))) continue;
                if (b.Tenons.Any(t => v.At.X >= Math.Min(t.Shoulder, t.Tip) - Tolerance.Same && v.At.X <= Math.Max(t.Shoulder, t.Tip) + Tolerance.Same)) continue;
                yield return At("outline", "corner", v.At);
            }
        }

        // Corners of a seat carry the names a joiner gives them; those of the wedge space are numbered round its outline.
        IEnumerable<Ordinate> Seat(StringHousing housing)
        {
            var (feature, v) = ($"housing of {housing.Piece.Replace('-', ' ')}", housing.Seat.Vertices);
            (string Name, int Index)[] corners = housing.IsRiser
                ? [("face, bottom", 0), ("face, top", 3), ("back, top", 2), ("back, bottom", 1)]
                : [("top, front", 0), ("top, back", v.Length - 1), ("underside, back", v.Length - 2), ("underside, front", v.Length - 3)];
            foreach (var (name, i) in corners) yield return At(feature, name, v[i].At, housing.Depth);
        }

        IEnumerable<Ordinate> Wedge(StringHousing housing)
        {
            var n = 0;
            foreach (var v in housing.Shape.Vertices.Where(v => !housing.Seat.Vertices.Any(s => s.At.IsSame(v.At))))
                yield return At($"housing of {housing.Piece.Replace('-', ' ')}", $"wedge space {Number.Print(++n, 0)}", v.At, housing.Depth);
        }
    }
}
