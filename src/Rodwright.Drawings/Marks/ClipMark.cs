using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>Marks seen through a window: what lies outside does not show.</summary>
public sealed record ClipMark : Mark
{
    /// <summary>A window with marks in it.</summary>
    public ClipMark(Box2 window, IEnumerable<Mark> marks, string? of = null) : base(Layer.Mixed, of)
    {
        Window = window;
        Marks = [.. marks];
    }

    /// <summary>The window, mm of paper.</summary>
    public Box2 Window { get; }

    /// <summary>The marks within, in drawing order.</summary>
    public ImmutableArray<Mark> Marks { get; }

    /// <inheritdoc/>
    public override Box2 Bounds
    {
        get
        {
            var box = BoundsOf(Marks).Common(Window);
            return box.IsEmpty || box.MinY > box.MaxY ? Box2.Empty : box;
        }
    }

    /// <inheritdoc/>
    public override void Accept(IMarkVisitor visitor) => visitor.Visit(this);
}
