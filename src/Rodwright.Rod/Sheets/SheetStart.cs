using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Rod.Sheets;

/// <summary>
/// A sheet begun: page, scale, lettering and title block are settled, the drawing is not yet there. Below the view lies the panel, for the key plan, tables
/// and notes: beside the title block where there is room, else a strip above it.
/// </summary>
public sealed record SheetStart
{
    private const double Breath = 4;
    private const double PanelDepth = 43;
    private const double LeastPanelWidth = 130;

    private SheetStart(Sheet empty, ViewNeed need)
    {
        Empty = empty;
        Need = need;
        Lettering = SheetLettering.For(empty.Paper, empty.Units);
        var frame = empty.Frame;
        var block = TitleBlock.BoxOf(empty.Paper);
        var bars = empty.Reserved.Skip(1).Select(b => (Box2?)b).FirstOrDefault();
        var left = (bars is { } b && b.MinY < block.MaxY ? b.MaxX : frame.MinX) + Breath;
        var room = empty.Room;
        if (block.MinX - Breath - left >= LeastPanelWidth)
        {
            Panel = new(left, frame.MinY + Breath, block.MinX - Breath, block.MaxY - 1);
            View = new(room.MinX, Panel.MaxY + Breath, room.MaxX, room.MaxY);
        }
        else
        {
            Panel = new(room.MinX, room.MinY, room.MaxX, room.MinY + PanelDepth);
            View = room with { MinY = Panel.MaxY + Breath };
        }
    }

    /// <summary>The sheet without its drawing.</summary>
    public Sheet Empty { get; }

    /// <summary>What the drawing needs at this scale, strips for figures included.</summary>
    public ViewNeed Need { get; }

    /// <summary>Heights of its lettering.</summary>
    public SheetLettering Lettering { get; }

    /// <summary>Room for the drawing with its figures, mm of paper.</summary>
    public Box2 View { get; }

    /// <summary>Room for key plan, tables and notes, at least 130 wide and 38 high, mm of paper.</summary>
    public Box2 Panel { get; }

    /// <summary>The scale settled on.</summary>
    public Scale Scale => Empty.Scale;

    /// <summary>Whether the drawing fits the view.</summary>
    public bool Fits =>
        Need.Width * Scale.Factor + Need.Left + Need.Right <= View.Width + 0.01 && Need.Height * Scale.Factor + Need.Top + Need.Bottom <= View.Height + 0.01;

    /// <summary>
    /// Begins a sheet: at the scale wanted, or else at the next usual smaller one at which the drawing fits; without a wish, at the largest. The page is
    /// turned when only that lets the drawing fit.
    /// </summary>
    /// <param name="rod">Job, paper, scale, date.</param>
    /// <param name="words">Names and piece.</param>
    /// <param name="need">What the drawing needs, for a lettering.</param>
    /// <param name="finer">Whether scales between the usual ones may be taken: for pictures of a room, which nothing is measured off.</param>
    public static SheetStart For(RodJob rod, SheetWords words, Func<SheetLettering, ViewNeed> need, bool finer = false)
    {
        SheetStart? last = null;
        foreach (var scale in finer ? SheetScales.RoomFrom(rod.Style.Scale, rod.Units) : SheetScales.From(rod.Style.Scale, rod.Units))
        {
            last = At(rod, words, need, scale);
            if (last.Fits) return last;
        }
        return last!;
    }

    /// <summary>Begins a sheet at exactly this scale, whether the drawing fits or not; see <see cref="Fits"/>.</summary>
    /// <inheritdoc cref="For" path="/param"/>
    /// <param name="scale">The scale.</param>
    public static SheetStart At(RodJob rod, SheetWords words, Func<SheetLettering, ViewNeed> need, Scale scale)
    {
        var stock = rod.Style.Paper;
        SheetStart? first = null;
        foreach (var page in Pages())
        {
            var start = On(page);
            if (start.Fits) return start;
            first ??= start;
        }
        return first!;

        IEnumerable<PaperSize> Pages()
        {
            if (stock.Height is { } height)
            {
                yield return stock.PageFor(stock.Width, height);
                yield return stock.PageFor(height, stock.Width);
                yield break;
            }
            var wanted = need(SheetLettering.For(stock.PageFor(stock.Width, stock.Width), rod.Units));
            const double margins = SheetFrame.FilingEdge + SheetFrame.Margin + 2 * Breath;
            yield return stock.PageFor(Math.Max(wanted.Width * scale.Factor + wanted.Left + wanted.Right + margins, 460), stock.Width);
        }

        SheetStart On(PaperSize page) => new(
            new Sheet
            {
                Name = words.Name, Title = words.Title, Units = rod.Units, Paper = page, Scale = scale, Marks = [], TrueSize = scale.IsFull, Block = BlockFor(rod, words),
            },
            need(SheetLettering.For(page, rod.Units)));
    }

    /// <summary>Begins a sheet of words and tables: the stock's own page, no true size.</summary>
    /// <param name="rod">Job, paper, date.</param>
    /// <param name="words">Names and piece.</param>
    /// <param name="scale">The scale told in the title block: that of its pictures.</param>
    public static SheetStart Written(RodJob rod, SheetWords words, Scale scale)
    {
        var stock = rod.Style.Paper;
        var page = stock.PageFor(stock.Height is null ? 460 : stock.Width, stock.Height ?? stock.Width);
        return new(
            new Sheet { Name = words.Name, Title = words.Title, Units = rod.Units, Paper = page, Scale = scale, HasScale = false, Marks = [], Block = BlockFor(rod, words) }, new(0, 0));
    }

    /// <summary>Sets a box of timber in the middle of the view, its strips for figures kept free.</summary>
    public Placement Place(Box2 timber) => Placement.Centred(
        timber, new(View.MinX + Need.Left, View.MinY + Need.Bottom, View.MaxX - Need.Right, View.MaxY - Need.Top), Scale);

    /// <summary>The sheet with its drawing.</summary>
    public Sheet Finish(IEnumerable<Mark> marks) => Empty with { Marks = [.. marks] };

    /// <summary>The words of a title block.</summary>
    public static TitleBlockText BlockFor(RodJob rod, SheetWords words)
    {
        var job = rod.Stair.Job;
        return new()
        {
            Job = job.Title,
            Piece = Sentence.Begin(words.Piece),
            Mark = words.Mark,
            Date = rod.Style.Date,
            Revision = rod.Style.Revision,
            Hand = HandWords(job),
            Note = string.Join(". ", new[] { ModelWords(job), words.Note, rod.Units.IsInches ? "Each figure to its own nearest 1/16\"" : "" }.Where(n => n.Length > 0)),
        };
    }

    /// <summary>"left hand", "right hand", "straight", or of a stair that turns to both hands "left, then right", "both hands".</summary>
    public static string HandWords(Job job)
    {
        var hands = Course.Of(job.Layout).Turns.Select(t => job.Layout.HandOf(t) == Hand.Left ? "left" : "right").ToList();
        return hands.Count == 0 ? "straight" : hands.Distinct().Count() == 1 ? $"{hands[0]} hand" : hands.Count == 2 ? $"{hands[0]}, then {hands[1]}" : "both hands";
    }

    /// <summary>"teaching model 1:2, timber sizes real" for a model; empty for a stair.</summary>
    public static string ModelWords(Job job) =>
        job.ModelScale == 1 ? "" : $"Teaching model 1:{Number.Print(1 / job.ModelScale, 2)}, sizes of timber are real";
}
