using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Booklet;

/// <summary>Draws a stage's lines strong over the lines of its piece's earlier stages.</summary>
internal sealed class BookletPictures
{
    private const double Words = 8; // below a picture, for its caption, mm
    private const double Edge = 6; // round a picture, for marks, mm
    private static readonly double[] InchRatios = [.. Scale.UsualInches.Select(s => s.Ratio), 64, 96];
    private static readonly double[] Ratios = [1, 2, 2.5, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100];
    private readonly Stair stair;
    private readonly RodStageList list;
    private readonly PlanView plan;
    private readonly Dictionary<string, StringView> strings;

    public BookletPictures(Stair stair, RodStageList list)
    {
        (this.stair, this.list) = (stair, list);
        plan = new(stair);
        strings = StringView.All(stair, true).Concat(StringView.All(stair, false)).ToDictionary(v => v.Boards[0].Part.Id);
    }

    /// <summary>The picture of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="rows">Its sequence.</param>
    /// <param name="width">Room, mm of paper.</param>
    /// <param name="share">Of its usual height, for where little room is left.</param>
    public BookletPicture Of(Stage stage, IReadOnlyList<BookletRow> rows, double width, double share = 1)
    {
        if (stage.Bench == Bench.Newel) return new BookletNewel(stair.Units, stair.Kit.Find(stage.Subject), list, stage, rows, width, share).Picture();
        var (box, flips, most) = stage.Bench switch
        {
            Bench.Plan => (Turn(stage) ?? plan.Bounds.Grown(20), false, 76.0),
            Bench.TaperedStep => (stair.Kit.Find(stage.Subject).Blank.Outline.Bounds.Grown(10), false, 80.0),
            // Before there is anything but the floor, the empty sheet above it tells nothing.
            _ when stage.Id.EndsWith("-floor", StringComparison.Ordinal) => (
                Mark.BoundsOf(stage.Lines.SelectMany(l => l.Paths).Select(p => new StrokeMark(strings[stage.Subject].Sense < 0 ? p.Mirrored() : p, Pens.Visible, Layer.Visible))).Grown(30),
                strings[stage.Subject].Sense < 0, 40.0),
            _ => (strings[stage.Subject].Bounds.Grown(30), strings[stage.Subject].Sense < 0, 94.0),
        };
        var scale = ScaleFor(box, width, most * share, stair.Units);
        return new(box.Height * scale.Factor + Words + 2 * Edge, scale, paper => Draw(stage, rows, box, flips, scale, paper));
    }

    /// <summary>The largest scale at which a box fits the width and a height of paper.</summary>
    public static Scale ScaleFor(Box2 box, double width, double height, Units units)
    {
        var ratios = units.IsInches ? InchRatios : Ratios;
        return Scale.OneTo(ratios.Where(r => box.Width / r <= width - 2 * Edge && box.Height / r <= height).DefaultIfEmpty(ratios[^1]).First());
    }

    private List<Mark> Draw(Stage stage, IReadOnlyList<BookletRow> rows, Box2 box, bool flips, Scale scale, Box2 paper)
    {
        var room = paper with { MinY = paper.MinY + Words };
        var place = Placement.Centred(box, room, scale);
        var (marks, fresh) = (new List<Mark>(), new List<Mark>());
        foreach (var line in list.Before(stage)) marks.AddRange(Strokes(line, false));
        foreach (var line in stage.Lines) fresh.AddRange(Strokes(line, true));
        var window = place.Map(box).Grown(Edge - 1).Common(room);
        List<Mark> drawn = [new ClipMark(window, [.. marks, .. fresh])];
        var placer = new LabelPlacer(room);
        placer.Avoid([new ClipMark(window, fresh)]);
        drawn.AddRange(BookletLabels.Place(rows, placer, (_, p) => place.Map(Turned(p)), window));
        drawn.Add(Caption(paper, stage, scale, stair.Units));
        return drawn;

        IEnumerable<Mark> Strokes(StageLine line, bool isNew) =>
            line.Paths.Select(p => place.Stroke(flips ? p.Mirrored() : p, BookletPens.Of(line, isNew), BookletPens.LayerOf(line), line.Of));

        Point2 Turned(Point2 p) => flips ? p.Mirrored : p;
    }

    public static TextMark Caption(Box2 paper, Stage stage, Scale scale, Units units) => new(
        new(paper.Centre.X, paper.MinY + 2), stage.Bench switch
        {
            Bench.Plan => $"the plan so far, {scale.Told(units)}",
            Bench.Newel => $"the four faces so far, {scale.Told(units)}, foot to the left; plain lengths left out",
            Bench.TaperedStep => $"the step on its board so far, seen from above, {scale.Told(units)}",
            _ => $"in development so far, seen from the stair, {scale.Told(units)}",
        }, 2.5, Layer.Lettering, HorizontalAnchor.Middle);

    /// <summary>Only the turn, for its tapered risers.</summary>
    private Box2? Turn(Stage stage)
    {
        if (!stage.Id.StartsWith("plan-turn-", StringComparison.Ordinal)) return null;
        var plan = stair.Plan;
        var turn = plan.Turns.First(t => plan.RiserLines.Any(r => stage.Id == $"plan-turn-{Number.Print(r.Number, 0)}" && plan.TurnOf(r.Number) == t));
        var points = plan.RiserLines.Where(r => r.Number >= TurnPlaces.FirstSquare(turn) && r.Number <= TurnPlaces.LastSquare(turn)).SelectMany(r => new[] { r.Inner, r.Outer });
        return Box2.Of([.. points, turn.Centre, .. TurnPlaces.Corners(turn)]).Grown(90);
    }
}
