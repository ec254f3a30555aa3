using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Sheets;

/// <summary>
/// Strings in development. Boards that meet round corners share a sheet where they fit at the scale; where only each alone does, they get one each.
/// </summary>
public static class StringSheets
{
    /// <summary>The wall strings' sheets.</summary>
    public static IReadOnlyList<Sheet> Walls(RodJob rod) => [.. StringView.All(rod.Stair, wall: true).SelectMany(v => Make(rod, v))];

    /// <summary>The newel strings' sheets.</summary>
    public static IReadOnlyList<Sheet> Newels(RodJob rod) => [.. StringView.All(rod.Stair, wall: false).SelectMany(v => Make(rod, v))];

    private static IEnumerable<Sheet> Make(RodJob rod, StringView view)
    {
        var whole = SheetStart.For(rod, Words(view), l => StringFigures.Need(view, l));
        // A long way round several corners does not go on small paper at any scale.
        if (view.Boards.Length > 1 && !(whole.Fits && Holds(view, whole))) return view.Apart().Select(v => Draw(v, SheetStart.For(rod, Words(v), l => StringFigures.Need(v, l))));
        if (view.Boards.Length > 1 && rod.Style.Scale is { } wanted && whole.Scale != wanted)
        {
            var apart = view.Apart().Select(v => (View: v, Start: SheetStart.At(rod, Words(v), l => StringFigures.Need(v, l), wanted))).ToList();
            if (apart.TrueForAll(a => a.Start.Fits)) return apart.Select(a => Draw(a.View, a.Start));
        }
        return [Draw(view, whole)];
    }

    /// <summary>Whether the figures stay on the paper: many of them crowd, and are spread past the ends of the drawing.</summary>
    private static bool Holds(StringView view, SheetStart start) =>
        start.Empty.Frame.Holds(Mark.BoundsOf(StringFigures.Draw(view, start.Place(view.Bounds), start.Lettering)));

    private static Sheet Draw(StringView view, SheetStart start)
    {
        var place = start.Place(view.Bounds);
        return start.Finish([.. On(view, place, start.Lettering, start.View), .. Panel(view, start)]);
    }

    /// <summary>The drawing with its figures and words, kept clear of what stands beside it.</summary>
    internal static IReadOnlyList<Mark> On(StringView view, Placement place, SheetLettering lettering, Box2 room, IReadOnlyList<Mark>? beside = null)
    {
        var lines = StringMarks.Draw(view, place);
        var figures = StringFigures.Draw(view, place, lettering);
        return [.. lines, .. figures, .. StringLabels.Draw(view, place, lettering, [.. lines, .. figures, .. beside ?? []], room, beside is null)];
    }

    private static IReadOnlyList<Mark> Panel(StringView view, SheetStart start)
    {
        var panel = start.Panel;
        var key = panel with { MaxX = panel.MinX + panel.Height };
        return
        [
            .. KeyPlan.Draw(view.Stair, [.. view.Parts.Select(p => p.Id)], key),
            .. PanelNotes.Draw(StringNotes.Of(view), panel with { MinX = key.MaxX + 5 }, start.Lettering.Words),
        ];
    }

    private static SheetWords Words(StringView view)
    {
        var first = view.Boards[0].Part;
        if (view.Boards.Length == 1) return new(first.Id, Sentence.Begin(first.Name), Sentence.Begin(first.Name), first.Mark);
        var marks = string.Join(", ", view.Parts.Select(p => p.Mark));
        return new($"{first.Id}-and-on", Sentence.Begin(view.Title), Sentence.Begin(view.Title), marks);
    }
}
