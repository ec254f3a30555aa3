using Rodwright.Drawings.Marks;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Things;

namespace Rodwright.Rod.Booklet;

/// <summary>Pens of the booklet's pictures: what is new is strong, what was there before light.</summary>
internal static class BookletPens
{
    public static Pen Of(StageLine line, bool isNew) => (isNew, line.Kind) switch
    {
        (true, LineKind.LinedIn) => new(DashOf(line) == Dash.None ? 0.5 : 0.25, DashOf(line)),
        (true, _) => new(DashOf(line) == Dash.None ? 0.35 : 0.25, DashOf(line)),
        (false, LineKind.LinedIn) => new(0.18, DashOf(line), 0.55),
        _ => new(0.13, DashOf(line), 0.4),
    };

    /// <summary>On the board: as the finished drawing has it, faint or lined in.</summary>
    public static Pen OnBoard(StageLine line) => (line.Kind, DashOf(line)) switch
    {
        (LineKind.LinedIn, var dash) when dash == Dash.None => Pens.Visible,
        (LineKind.LinedIn, var dash) => new(0.25, dash),
        (_, var dash) => Pens.Construction with { Dash = dash },
    };

    public static Layer LayerOf(StageLine line) => line.Kind == LineKind.Faint ? Layer.Construction : Layer.Visible;

    private static Dash DashOf(StageLine line) => line.Of switch
    {
        ThingId.WalkingLine or ThingId.CentreLine => Dash.LongDot,
        ThingId.MarginLine => Dash.Broken,
        _ => line.Of.StartsWith("nosing-", StringComparison.Ordinal) ? Dash.Broken : Dash.None,
    };
}
