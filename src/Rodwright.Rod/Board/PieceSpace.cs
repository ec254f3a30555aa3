using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Board;

/// <summary>
/// The room a piece takes, in steps, so that a small change of a number moves neither its drawing on it nor its neighbours: timber in whole steps of paper,
/// round it strips for figures, above it a strip for the title.
/// </summary>
/// <param name="Timber">What is drawn, grown to whole steps, mm of timber.</param>
/// <param name="Left">Strip, mm of paper.</param>
/// <param name="Right">Strip, mm of paper.</param>
/// <param name="Top">Strip, mm of paper, without the title's.</param>
/// <param name="Bottom">Strip, mm of paper.</param>
/// <param name="Factor">Timber to paper.</param>
internal sealed record PieceSpace(Box2 Timber, double Left, double Right, double Top, double Bottom, double Factor)
{
    /// <summary>Above the drawing, for the title, mm of paper.</summary>
    public const double Title = 20;

    private const double Step = 10; // mm of paper
    private const double Strip = 5; // likewise, of strips

    /// <summary>Width, mm of paper.</summary>
    public double Width => Left + Timber.Width * Factor + Right;

    /// <summary>Height, mm of paper.</summary>
    public double Height => Bottom + Timber.Height * Factor + Top + Title;

    /// <summary>Where drawing, figures and labels may go.</summary>
    public Box2 Room => new(0, 0, Width, Height - Title);

    /// <summary>The room for a drawing of some timber and the strips it needs.</summary>
    public static PieceSpace Of(Box2 timber, ViewNeed need, double factor)
    {
        var step = Step / factor;
        return new(
            new(Math.Floor(timber.MinX / step + 0.001) * step, Math.Floor(timber.MinY / step + 0.001) * step, Math.Ceiling(timber.MaxX / step - 0.001) * step, Math.Ceiling(timber.MaxY / step - 0.001) * step),
            Up(need.Left), Up(need.Right), Up(need.Top), Up(need.Bottom), factor);
    }

    /// <summary>The drawing's place on the piece.</summary>
    public Placement Place(Drawings.Paper.Scale scale) => new(scale, new(Timber.MinX, Timber.MinY), new(Left, Bottom));

    /// <summary>Grown where a drawing sticks out; itself when it does not.</summary>
    public PieceSpace Holding(Box2 drawn)
    {
        var room = Room;
        if (drawn.IsEmpty || room.Holds(drawn, 0.01)) return this;
        return this with
        {
            Left = Left + Up(Math.Max(0, room.MinX - drawn.MinX)), Right = Right + Up(Math.Max(0, drawn.MaxX - room.MaxX)),
            Top = Top + Up(Math.Max(0, drawn.MaxY - room.MaxY)), Bottom = Bottom + Up(Math.Max(0, room.MinY - drawn.MinY)),
        };
    }

    private static double Up(double strip) => Math.Ceiling(strip / Strip - 0.001) * Strip;
}
