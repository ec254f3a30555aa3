using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Running ordinates of a string in development: s below it, heights at its upper end, each from one datum.</summary>
public static class StringFigures
{
    private const double Off = 7; // from the drawing to the line of ordinates, mm of paper

    /// <summary>The room a view needs with its figures.</summary>
    public static ViewNeed Need(StringView view, SheetLettering lettering)
    {
        var (below, beside) = (Off + RowStop.Strip(lettering, Stations(view)), Off + RowStop.Strip(lettering, Heights(view)));
        var side = 8 + lettering.Figures;
        return new(view.Bounds.Width, view.Bounds.Height, view.Sense > 0 ? side : beside, view.Sense > 0 ? beside : side, 7 + 2 * lettering.Figures, below);
    }

    /// <summary>The ordinates.</summary>
    public static IReadOnlyList<Mark> Draw(StringView view, Placement place, SheetLettering lettering)
    {
        var box = place.Map(view.Bounds);
        var below = Stations(view).Select(x => new DimensionStop(new(place.Map(view.At(x.Value, 0)).X, box.MinY), x.Value, x.Note, x.Of)).ToList();
        var far = view.Sense > 0 ? box.MaxX : box.MinX;
        var beside = Heights(view).Select(x => new DimensionStop(new(far, place.Map(new Point2(0, x.Value)).Y), x.Value, x.Note, x.Of));
        var along = new Vector2(view.Sense, 0);
        var heights = RunningDimension.Draw(beside, new(new(far + view.Sense * Off, 0), new(0, 1)), lettering.Dimensions);
        var stations = FigureRows.Apart(heights, more => RunningDimension.Draw(below, new(new(0, box.MinY - Off - more), along), lettering.Dimensions));
        return [.. heights, .. stations];
    }

    private static List<RowStop> Stations(StringView view)
    {
        var stops = view.PitchPoints.Select(p => new RowStop(p.At.X, $"riser {Number.Print(p.Riser, 0)}", ThingId.Riser(p.Riser))).ToList();
        foreach (var board in view.Boards)
        {
            var (site, part) = (board.Site, board.Part.Id);
            var (low, high) = (board.LowerEdge.Vertices, board.UpperEdge.Vertices);
            switch (site.Lower.Kind)
            {
                case StringEndKind.Foot:
                    Add(high[0].At.X, "foot", part);
                    if (low[0].At.Y == low[1].At.Y && low[1].At.X < low[^1].At.X) Add(low[1].At.X, "level cut", part);
                    break;
                case StringEndKind.Newel:
                    Add(site.Lower.At, "centre", site.Lower.Newel);
                    break;
                case StringEndKind.CornerLetIn:
                    Add(site.Lower.At, "corner", TurnPlaces.CornerAt(view.Stair.Plan, site, site.Lower.At));
                    if (view.Boards.Length == 1) Add(board.Outline.Bounds.MinX, "end, let in", part);
                    break;
                default: break;
            }
            switch (site.Upper.Kind)
            {
                case StringEndKind.Newel:
                    Add(site.Upper.At, "centre", site.Upper.Newel);
                    break;
                case StringEndKind.CornerThrough:
                    if (view.Boards.Length == 1) Add(site.Upper.At, "corner", TurnPlaces.CornerAt(view.Stair.Plan, site, site.Upper.At));
                    if (view.Boards.Length == 1) Add(board.Outline.Bounds.MaxX, "end, through", part);
                    break;
                case StringEndKind.Head:
                    Add(low[^1].At.X, "trimmer", part);
                    Add(high[^1].At.X, "end", part);
                    break;
                default: break;
            }
            foreach (var tenon in board.Tenons)
            {
                Add(tenon.Shoulder, "shoulder", ThingId.Of(board, tenon));
                Add(tenon.Tip, "tenon", ThingId.Of(board, tenon));
            }
        }
        return Merged(stops);

        void Add(double s, string note, string of) => stops.Add(new(s, note, of));
    }

    private static List<RowStop> Heights(StringView view)
    {
        var stops = view.PitchPoints.Select(p => new RowStop(p.At.Y, view.Stair.Plan.Steps[p.Riser - 1] switch
        {
            StepKind.Landing => "landing",
            StepKind.Floor => "upper floor",
            _ => $"tread {Number.Print(p.Riser, 0)}",
        }, ThingId.Level(view.Stair.Plan, p.Riser))).ToList();
        if (view.HasFloor) stops.Add(new(view.Floor, view.Floor > 0 ? "landing" : "floor", view.FloorId));
        foreach (var board in view.Boards)
        {
            if (board.Site.Lower.Kind == StringEndKind.Foot) stops.Add(new(board.UpperEdge.Vertices[0].At.Y, "foot", board.Part.Id));
            if (board.Site.Upper.Kind == StringEndKind.Head)
            {
                stops.Add(new(board.Site.Upper.Level - view.Stair.Job.Practice.FloorBoards, "seat", board.Part.Id));
                stops.Add(new(board.UpperEdge.Vertices[^1].At.Y, "head", board.Part.Id));
            }
            // Both boards' edges meet at the corner at these heights.
            if (board.Site.Upper.Kind == StringEndKind.CornerThrough) Corner(board, board.Site.Upper.At);
            if (board.Site.Lower.Kind == StringEndKind.CornerLetIn && view.Boards.Length == 1) Corner(board, board.Site.Lower.At);
            foreach (var tenon in board.Tenons)
            {
                stops.Add(new(tenon.Bottom, "tenon", ThingId.Of(board, tenon)));
                stops.Add(new(tenon.Top, "tenon", ThingId.Of(board, tenon)));
            }
        }
        return Merged(stops);

        void Corner(StringBoard board, double s)
        {
            var id = TurnPlaces.CornerAt(view.Stair.Plan, board.Site, s);
            stops.Add(new(GraphCut.HeightAt(board.LowerEdge, s), "corner, below", id));
            stops.Add(new(GraphCut.HeightAt(board.UpperEdge, s), "corner, above", id));
        }
    }

    /// <summary>Two things at one station are one stop with both names.</summary>
    private static List<RowStop> Merged(List<RowStop> stops)
    {
        var merged = new List<RowStop>();
        foreach (var stop in stops.OrderBy(s => s.Value))
        {
            if (merged.Count == 0 || stop.Value - merged[^1].Value > 0.05) merged.Add(stop);
            else if (!merged[^1].Note.Contains(stop.Note, StringComparison.Ordinal)) merged[^1] = merged[^1] with { Note = $"{merged[^1].Note}, {stop.Note}" };
        }
        return merged;
    }
}
