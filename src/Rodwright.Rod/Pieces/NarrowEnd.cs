using System.Collections.Immutable;
using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces;

/// <summary>
/// The narrow end of a tapered tread drawn larger, because its corners crowd: above the view where there is paper, else in
/// the empty corner of its board beyond the back edge.
/// </summary>
internal sealed class NarrowEnd
{
    private const double Reach = 90; // of the tread round the inner end of its nosing that is taken in, mm
    private const double Inset = 3;
    private const int Crowded = 3; // corners
    private const double LeastHeight = 22; // of paper, so that the letters find room
    private readonly TreadView view;
    private readonly Placement? place;
    private readonly bool isLeft;

    /// <summary>Finds the corners, and a scale at which they fit.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="part">The tread.</param>
    /// <param name="view">Its view.</param>
    /// <param name="board">The board it is set out on, mm of paper.</param>
    /// <param name="above">Paper free above it.</param>
    /// <param name="scale">Scale of the view.</param>
    /// <param name="lettering">Of the sheet.</param>
    public NarrowEnd(Stair stair, Part part, TreadView view, Box2 board, Box2 above, Scale scale, SheetLettering lettering)
    {
        this.view = view;
        var inner = stair.Plan.Riser(part.Step).Inner;
        var at = view.Measured(part.FaceSide.Frame.ToLocal(new(inner.X, inner.Y, 0)).Face);
        isLeft = at.X < view.Board.Centre.X;
        Corners = [.. Enumerable.Range(0, view.Corners.Length).Where(i => Math.Abs(view.Corners[i].X - at.X) < Reach && view.Corners[i].Y < at.Y + Reach)];
        Window = Box2.Empty;
        var timber = Box2.Of(Corners.Select(i => view.Corners[i])).Grown(14);
        foreach (var (room, share) in (ReadOnlySpan<(Box2, double)>)[(above, 1), (board.Grown(-Inset), 0.42)])
        {
            foreach (var s in Scale.UsualIn(stair.Units).Where(s => s.Ratio * 2 <= scale.Ratio))
            {
                var (width, height) = (timber.Width * s.Factor, timber.Height * s.Factor);
                if (width > room.Width * Math.Min(share, 0.5) || height > room.Height * share - lettering.Words * 3 || height < LeastHeight) continue;
                var x = isLeft ? room.MinX : room.MaxX - width;
                Window = new(x, room.MaxY - height, x + width, room.MaxY);
                place = Placement.Centred(timber, Window, s);
                break;
            }
            if (place is not null) break;
        }
        // Fewer corners do not crowd: they read in the view itself.
        if (Corners.Length < Crowded)
        {
            place = null;
            Window = Box2.Empty;
        }
        if (place is null) Corners = [];
        Words = place is null ? "" : $"narrow end {place.Scale.Told(stair.Units)}";
        // White beneath the whole of its words, which may be wider than the window.
        var over = Math.Max(0, Lettering.Width(Words, lettering.Words) + 1.2 - Window.Width);
        Room = Window.IsEmpty ? Window : new(Window.MinX - (isLeft ? 0 : over), Window.MinY - lettering.Words * 2, Window.MaxX + (isLeft ? over : 0), Window.MaxY);
    }

    /// <summary>The corners drawn here, by index; none where there is no room.</summary>
    public ImmutableArray<int> Corners { get; }

    private Box2 Window { get; }

    private Box2 Room { get; }

    private string Words { get; }

    /// <summary>The marks; paper white beneath, for the extension lines that pass there.</summary>
    public IEnumerable<Mark> Draw(SheetLettering lettering)
    {
        if (place is not { } p) yield break;
        yield return new FillMark([Path2.Rectangle(Room.MinX, Room.MinY, Room.MaxX, Room.MaxY)], 0, Layer.Visible);
        var inside = view.Faces().Select(f => (Mark)p.Stroke(f.Line, Pens.Hidden, Layer.Hidden, f.Of)).ToList();
        inside.Add(p.Stroke(view.Outline, Pens.Outline, Layer.OutlineToCut, view.Id));
        yield return new ClipMark(Window, inside);
        yield return new StrokeMark(Path2.Rectangle(Window.MinX, Window.MinY, Window.MaxX, Window.MaxY), Pens.Rule, Layer.Visible);
        var placer = new LabelPlacer(Window.Grown(-0.4));
        placer.Avoid(FlatMarks.Of(inside).Select(m => m.Mark));
        foreach (var i in Corners)
            foreach (var mark in placer.Place(TreadView.Letter(i), p.Map(view.Corners[i]), lettering.Words, bold: true, of: view.Id)?.Marks ?? []) yield return mark;
        yield return new TextMark(
            new(isLeft ? Window.MinX : Window.MaxX, Window.MinY - lettering.Words * 1.5), Words, lettering.Words, Layer.Lettering, isLeft ? HorizontalAnchor.Start : HorizontalAnchor.End);
    }
}
