using System.Collections.Immutable;
using Rodwright.Drawings.Fonts;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>One line of lettering in the embedded face. Its height is that of the capitals and never changes with a drawing's scale.</summary>
public sealed record TextMark : Mark
{
    /// <summary>A line of lettering.</summary>
    /// <param name="at">The point it hangs on, mm of paper.</param>
    /// <param name="text">One line; no line breaks.</param>
    /// <param name="height">Height of the capitals, mm (ISO 3098 series: 2.5, 3.5, 5, 7).</param>
    /// <param name="layer">What it means.</param>
    /// <param name="horizontal">Which part along the line sits at the point.</param>
    /// <param name="vertical">Which part across the line sits at the point.</param>
    /// <param name="turn">Anticlockwise turn about the point.</param>
    /// <param name="bold">Heavier letters.</param>
    /// <param name="knockout">Whether a white box is laid under the letters first.</param>
    /// <param name="of">Id of the thing drawn.</param>
    public TextMark(
        Point2 at, string text, double height, Layer layer,
        HorizontalAnchor horizontal = HorizontalAnchor.Start, VerticalAnchor vertical = VerticalAnchor.Baseline,
        Angle turn = default, bool bold = false, bool knockout = false, string? of = null) : base(layer, of)
    {
        At = at;
        Text = text;
        Height = height;
        Horizontal = horizontal;
        Vertical = vertical;
        Turn = turn;
        Bold = bold;
        Knockout = knockout;
    }

    /// <summary>The point the text hangs on.</summary>
    public Point2 At { get; init; }

    /// <summary>The words.</summary>
    public string Text { get; init; }

    /// <summary>Height of the capitals, mm.</summary>
    public double Height { get; init; }

    /// <summary>Which part along the line sits at <see cref="At"/>.</summary>
    public HorizontalAnchor Horizontal { get; init; }

    /// <summary>Which part across the line sits at <see cref="At"/>.</summary>
    public VerticalAnchor Vertical { get; init; }

    /// <summary>Anticlockwise turn about <see cref="At"/>.</summary>
    public Angle Turn { get; init; }

    /// <summary>Heavier letters.</summary>
    public bool Bold { get; init; }

    /// <summary>Whether a white box is laid under the letters first.</summary>
    public bool Knockout { get; init; }

    /// <summary>Length of the line of letters, mm, by the embedded face.</summary>
    public double Width => Lettering.Width(Text, Height, Bold);

    /// <summary>Where the baseline starts, after both anchors and the turn: what writers without anchors print at.</summary>
    public Point2 BaselineStart => OnPaper(Left, Base);

    /// <summary>The four corners of the box round the letters' ink, turned with the text: bottom left, bottom right, top right, top left.</summary>
    public ImmutableArray<Point2> Corners => CornersGrown(0);

    /// <summary>The corners of the white box a knockout lays down: the ink box grown by a quarter of the height.</summary>
    public ImmutableArray<Point2> KnockoutCorners => CornersGrown(Height / 4);

    /// <inheritdoc/>
    public override Box2 Bounds => Text.Length == 0 ? Box2.Empty : Box2.Of(Knockout ? KnockoutCorners : Corners);

    private double Left => Horizontal switch
    {
        HorizontalAnchor.Start => 0,
        HorizontalAnchor.Middle => -Width / 2,
        _ => -Width,
    };

    private double Base => Vertical == VerticalAnchor.Baseline ? 0 : -Height / 2;

    /// <inheritdoc/>
    public override void Accept(IMarkVisitor visitor) => visitor.Visit(this);

    private ImmutableArray<Point2> CornersGrown(double by)
    {
        var (bottom, top) = Lettering.InkRise(Text, Height, Bold);
        var (left, right) = (Left - by, Left + Width + by);
        (bottom, top) = (Base + bottom - by, Base + top + by);
        return [OnPaper(left, bottom), OnPaper(right, bottom), OnPaper(right, top), OnPaper(left, top)];
    }

    private Point2 OnPaper(double along, double across)
    {
        if (Turn.Radians == 0) return new(At.X + along, At.Y + across);
        var x = Vector2.At(Turn.Radians);
        return At + along * x + across * x.Left;
    }
}
