using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>A shape filled with an even tint. Several outlines fill by the even-odd rule, so an outline within another is a hole.</summary>
public sealed record FillMark : Mark
{
    /// <summary>A filled shape.</summary>
    /// <exception cref="ArgumentException">An outline is open, or there is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tint is not 0 to 1.</exception>
    public FillMark(IEnumerable<Path2> outlines, double tint, Layer layer, string? of = null) : base(layer, of)
    {
        Outlines = [.. outlines];
        if (Outlines.IsEmpty || Outlines.Any(o => !o.Closed)) throw new ArgumentException("a fill needs closed outlines", nameof(outlines));
        if (!(tint >= 0 && tint <= 1)) throw new ArgumentOutOfRangeException(nameof(tint), tint, "a tint is 0 to 1");
        Tint = tint;
    }

    /// <summary>The closed outlines.</summary>
    public ImmutableArray<Path2> Outlines { get; }

    /// <summary>How dark: 0 is paper white (which covers what lies under it), 1 is black.</summary>
    public double Tint { get; }

    /// <inheritdoc/>
    public override Box2 Bounds
    {
        get
        {
            var box = Box2.Empty;
            foreach (var outline in Outlines) box = box.With(outline.Bounds);
            return box;
        }
    }

    /// <inheritdoc/>
    public override void Accept(IMarkVisitor visitor) => visitor.Visit(this);
}
