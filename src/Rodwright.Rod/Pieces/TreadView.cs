using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Pieces;

/// <summary>
/// A tread or nosing piece seen from above, its nosing edge level and up the stair up the sheet. Places are measured along the nosing from the left end of
/// the board, and square to it from the nosing's edge: a slanting end may reach below that.
/// </summary>
internal sealed class TreadView
{
    private readonly Stair stair;
    private readonly Part part;

    public TreadView(Stair stair, Part part)
    {
        this.stair = stair;
        this.part = part;
        Outline = part.FaceSide.Outline.Moved(Measured);
        Corners = TreadCorners.Of(part);
    }

    /// <summary>Id of the piece.</summary>
    public string Id => part.Id;

    /// <summary>The outline on the board.</summary>
    public Path2 Outline { get; }

    /// <summary>Its corners, lettered A, B, C in this order.</summary>
    public ImmutableArray<Point2> Corners { get; }

    /// <summary>The smallest board, so measured.</summary>
    public Box2 Board => new(0, part.Blank.Corner.Y, part.Blank.Length, part.Blank.Corner.Y + part.Blank.Width);

    /// <summary>A point of the face measured from the two datum edges.</summary>
    public Point2 Measured(Point2 face) => TreadCorners.Measured(part, face);

    /// <summary>Letter of a corner.</summary>
    public static string Letter(int i) => TreadCorners.Letter(i);

    /// <summary>The view without figures; letters keep off the figures given, and stand only at the corners asked for.</summary>
    public IReadOnlyList<Mark> Draw(Placement place, SheetLettering lettering, bool letters, IReadOnlyList<Mark>? figures = null, Func<int, bool>? lettered = null)
    {
        var practice = stair.Job.Practice;
        var marks = new List<Mark>();
        var round = part.Cuts.FirstOrDefault(c => c.Kind == CutKind.RoundedEdge);
        var board = place.Map(Board);
        var hidden = new List<Mark>();
        foreach (var (line, of) in Faces()) hidden.Add(place.Stroke(line, Pens.Hidden, Layer.Hidden, of));
        marks.Add(new ClipMark(board, hidden));
        marks.AddRange(Within(practice.Nosing, Pens.Hidden, Layer.Hidden, ThingId.Riser(part.Step)));
        marks.AddRange(Within(round?.Depth ?? 0, Pens.Nosing, Layer.Nosing, round is null ? part.Id : ThingId.Of(part, round)));
        marks.Add(place.Stroke(Path2.Rectangle(Board.MinX, Board.MinY, Board.MaxX, Board.MaxY), Pens.Dimension, Layer.Visible, part.Id));
        foreach (var y in GlueUp.Of(part, practice).Joints) marks.Add(Level(Board.MinY + y, Pens.Centre, Layer.Centre));
        marks.Add(place.Stroke(Outline, Pens.Outline, Layer.OutlineToCut, part.Id));
        marks.AddRange(Words(place, lettering, letters, figures ?? [], lettered ?? (_ => true)));
        return marks;

        // A line along the nosing, only where it lies on the piece.
        IEnumerable<Mark> Within(double y, Pen pen, Layer layer, string of)
        {
            var crossings = Enumerable.Range(0, Outline.EdgeCount).Select(Outline.Edge).Where(e => e.From.Y > y != e.To.Y > y)
                .Select(e => e.From.X + (y - e.From.Y) / (e.To.Y - e.From.Y) * (e.To.X - e.From.X)).Order().ToList();
            for (var i = 0; i + 1 < crossings.Count; i += 2)
                yield return place.Stroke(Path2.Polyline(new Point2(crossings[i], y), new Point2(crossings[i + 1], y)), pen, layer, of);
        }

        StrokeMark Level(double y, Pen pen, Layer layer) => place.Stroke(Path2.Polyline(new Point2(0, y), new Point2(Board.MaxX, y)), pen, layer, part.Id);
    }

    /// <summary>Ordinates of every corner: along the nosing below the view, square to it at its left; lower where large figures of both would meet.</summary>
    public IReadOnlyList<Mark> Ordinates(Placement place, Box2 round, SheetLettering lettering, bool letters, bool apart = false)
    {
        var along = Stops(p => p.X).Select(s => new DimensionStop(place.Map(new Point2(s.Value, s.Least)), s.Value, letters ? s.Note : "", part.Id)).ToList();
        var up = Stops(p => p.Y).Select(s => new DimensionStop(place.Map(new Point2(s.Least, s.Value)), s.Value, letters ? s.Note : "", part.Id));
        var beside = RunningDimension.Draw(up, new(new(round.MinX - 3, 0), new(0, 1)), lettering.Dimensions);
        return [.. apart ? FigureRows.Apart(beside, Below) : Below(0), .. beside];

        IReadOnlyList<Mark> Below(double lower) => RunningDimension.Draw(along, new(new(0, round.MinY - 3 - lower), new(1, 0)), lettering.Dimensions);
    }

    /// <summary>Places along one axis, each once, with the letters of the corners there and where the nearest of them lies on the other axis.</summary>
    private IEnumerable<(double Value, double Least, string Note)> Stops(Func<Point2, double> of) => Corners
        .Select((p, i) => (Value: of(p), Other: p.X + p.Y - of(p), Letter: Letter(i)))
        .OrderBy(c => c.Value).Aggregate(new List<List<(double Value, double Other, string Letter)>>(), (groups, c) =>
        {
            if (groups.Count > 0 && c.Value - groups[^1][0].Value < 0.05) groups[^1].Add(c);
            else groups.Add([c]);
            return groups;
        })
        .Select(g => (g[0].Value, g.Min(c => c.Other), string.Concat(g.Select(c => c.Letter).Order(StringComparer.Ordinal))));

    /// <summary>Faces of the strings and newels under the piece's ends, with the ids of these.</summary>
    public IEnumerable<(Path2 Line, string Of)> Faces()
    {
        var near = Board.Grown(1);
        foreach (var edge in stair.Plan.Inner.Edges.Concat(stair.Plan.Outer.Edges))
        {
            var line = Path2.Polyline(OnBoard(edge.From), OnBoard(edge.To));
            if (edge.Length > Tolerance.Same && edge.Kind != BoundaryKind.FreeEnd && line.Bounds.Grown(0.01).Overlaps(near)) yield return (line, edge.Carrier.Length > 0 ? edge.Carrier : ThingId.WallOuter);
        }

        Point2 OnBoard(Point2 p) => Measured(part.FaceSide.Frame.ToLocal(new(p.X, p.Y, 0)).Face);
    }

    private IEnumerable<Mark> Words(Placement place, SheetLettering lettering, bool letters, IReadOnlyList<Mark> figures, Func<int, bool> lettered)
    {
        var placer = new LabelPlacer(place.Map(Board).Grown(letters ? lettering.Words * 3 : 0));
        placer.Avoid([place.Stroke(Outline, Pens.Outline, Layer.OutlineToCut)]);
        placer.Avoid(figures);
        placer.Avoid(place.Map(Path2.Rectangle(Board.MinX, Board.MinY, Board.MaxX, Board.MaxY)));
        foreach (var (face, _) in Faces()) placer.Avoid(place.Map(face));
        foreach (var y in GlueUp.Of(part, stair.Job.Practice).Joints.Select(y => Board.MinY + y).Append(stair.Job.Practice.Nosing).Concat(part.Cuts.Where(c => c.Kind == CutKind.RoundedEdge).Select(c => c.Depth)))
            placer.Avoid(place.Map(Path2.Polyline(new Point2(0, y), new Point2(Board.MaxX, y))));
        var middle = place.Map(Middle());
        foreach (var mark in placer.Place(part.Mark, middle, lettering.Mark, bold: true, of: part.Id)?.Marks ?? []) yield return mark;
        // Beside the mark on a narrow board, below it on a wide one.
        var beside = place.Map(Board.Height) < lettering.Mark * 6;
        var grain = placer.Place("↔ grain", middle + (beside ? new(lettering.Mark * 4, 0) : new(0, -lettering.Mark * 2)), lettering.Words, of: part.Id);
        if (grain is { Lead: null }) yield return grain.Text;
        if (!letters) yield break;
        foreach (var i in Enumerable.Range(0, Corners.Length).Where(lettered))
            foreach (var mark in placer.Place(Letter(i), place.Map(Corners[i]), lettering.Words, bold: true, of: part.Id)?.Marks ?? []) yield return mark;
    }

    /// <summary>Centre of gravity of the outline: inside it for any tread.</summary>
    private Point2 Middle()
    {
        double x = 0, y = 0, twice = 0;
        for (var i = 0; i < Corners.Length; i++)
        {
            var (a, b) = (Corners[i], Corners[(i + 1) % Corners.Length]);
            var cross = a.X * b.Y - b.X * a.Y;
            (x, y, twice) = (x + (a.X + b.X) * cross, y + (a.Y + b.Y) * cross, twice + cross);
        }
        return new(x / (3 * twice), y / (3 * twice));
    }
}
