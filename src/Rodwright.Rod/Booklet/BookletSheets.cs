using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Booklet;

/// <summary>
/// The step-by-step booklet: the stages of the rod one after another, each with a picture of the rod so far and a numbered sequence of what to do and why,
/// with a box to tick.
/// </summary>
public static class BookletSheets
{
    /// <summary>The booklet's pages: A4 upright, or the job's paper where that is a larger sheet.</summary>
    /// <param name="rod">The job.</param>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        var stair = rod.Stair;
        var list = RodStages.Of(stair);
        var flow = new BookletFlow(Empty(rod));
        flow.Cover(stair.Job.Title, CoverWords.Kind(stair),
        [
            "This booklet sets the stair out on the rod, line by line, in the order it is drawn at the bench. It is made from the same numbers as the sheets, and every distance is in millimetres.",
            "In each picture the lines of the stage are strong, and what was there before is light. Figures in bold are the numbers of the sequence below; lines told in a table carry their own marks. Draw faint lines lightly: they are only there to find others by.",
            "Do each step, compare it with why, and tick its box; measure again before ticking. The walls are not square, this stair is: check every size on site before cutting.",
            $"Books named: {string.Join("; ", Published.Books.Select(b => $"{b.Name}, that is {b.Title}"))}.",
            .. stair.Job.ModelScale == 1 ? (string[])[] : [$"{SheetStart.ModelWords(stair.Job)}; the distances are the model's own."],
        ]);
        var pictures = new BookletPictures(stair, list);
        var number = 0;
        foreach (var stage in list.Stages)
        {
            var rows = BookletRow.Of(stage, rod.Units);
            flow.Stage($"{Number.Print(++number, 0)}. {stage.Title}", share => pictures.Of(stage, rows, flow.Width, share), rows);
        }
        return flow.Sheets();
    }

    private static Sheet Empty(RodJob rod)
    {
        var stock = rod.Style.Paper;
        // A roll makes no booklet.
        var large = stock.Height is { } height && Math.Min(stock.Width, height) > PaperSize.A4.Width + 1;
        return new()
        {
            Name = "booklet", Title = "Step by step", Paper = large ? stock.PageFor(stock.Width, stock.Height!.Value) : PaperSize.A4, Marks = [],
            Scale = Scale.OneTo(20), Units = rod.Units, Block = SheetStart.BlockFor(rod, new SheetWords("booklet", "Step by step", "step-by-step booklet", "", "Scales under the pictures")),
        };
    }
}
