using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>
/// One thing on paper, finished: position and size in millimetres of paper, y up, origin bottom left of the sheet. Immutable.
/// The set of kinds is closed; each writer visits them all. Marks that hold sequences make no claim to equality by value.
/// </summary>
public abstract record Mark
{
    private protected Mark(Layer layer, string? of)
    {
        Layer = layer;
        Of = of;
    }

    /// <summary>What the mark means.</summary>
    public Layer Layer { get; init; }

    /// <summary>Id of the thing drawn, for picking; null when the mark stands for nothing in particular.</summary>
    public string? Of { get; init; }

    /// <summary>The smallest box on paper that holds the mark; lines count without their width. Empty for a mark that shows nothing.</summary>
    public abstract Box2 Bounds { get; }

    /// <summary>Calls the visitor's method for this kind.</summary>
    public abstract void Accept(IMarkVisitor visitor);

    /// <summary>The box round several marks.</summary>
    public static Box2 BoundsOf(IEnumerable<Mark> marks)
    {
        var box = Box2.Empty;
        foreach (var mark in marks) box = box.With(mark.Bounds);
        return box;
    }
}
