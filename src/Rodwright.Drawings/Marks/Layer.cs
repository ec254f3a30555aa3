namespace Rodwright.Drawings.Marks;

/// <summary>
/// What a mark means on a drawing, apart from how it looks: a bench saw cares for outlines to cut, a screen may fold the dimensions away.
/// A closed catalogue; compare by reference.
/// </summary>
public sealed class Layer
{
    private Layer(string id, string title)
    {
        Id = id;
        Title = title;
    }

    /// <summary>Stable kebab-case name, safe in files and style sheets.</summary>
    public string Id { get; }

    /// <summary>The name for people.</summary>
    public string Title { get; }

    /// <summary>For marks that hold other marks: each of those says its own layer.</summary>
    public static Layer Mixed { get; } = new("mixed", "Mixed");

    /// <summary>Lines the saw or the router follows.</summary>
    public static Layer OutlineToCut { get; } = new("outline-to-cut", "Outline to cut");

    /// <summary>Edges that are seen but not cut.</summary>
    public static Layer Visible { get; } = new("visible", "Visible edges");

    /// <summary>Edges behind the face looked at.</summary>
    public static Layer Hidden { get; } = new("hidden", "Hidden edges");

    /// <summary>Nosing lines.</summary>
    public static Layer Nosing { get; } = new("nosing", "Nosings");

    /// <summary>Centre lines, walking lines.</summary>
    public static Layer Centre { get; } = new("centre", "Centre lines");

    /// <summary>Faint setting-out lines.</summary>
    public static Layer Construction { get; } = new("construction", "Construction");

    /// <summary>Dimension and extension lines with their figures.</summary>
    public static Layer Dimension { get; } = new("dimension", "Dimensions");

    /// <summary>Words: marks, notes, tables.</summary>
    public static Layer Lettering { get; } = new("lettering", "Lettering");

    /// <summary>Housings, sunk from the face.</summary>
    public static Layer Housing { get; } = new("housing", "Housings");

    /// <summary>Mortices.</summary>
    public static Layer Mortice { get; } = new("mortice", "Mortices");

    /// <summary>Bored holes.</summary>
    public static Layer Bore { get; } = new("bore", "Bores");

    /// <summary>Tenons and other tongues.</summary>
    public static Layer Tenon { get; } = new("tenon", "Tenons");

    /// <summary>Stock that goes on the floor.</summary>
    public static Layer Waste { get; } = new("waste", "Waste");

    /// <summary>Light shading.</summary>
    public static Layer Tint { get; } = new("tint", "Tints");

    /// <summary>Walls, floors and openings: what stands there already.</summary>
    public static Layer Site { get; } = new("site", "Site");

    /// <summary>What is wrong: the place a finding points at.</summary>
    public static Layer Fault { get; } = new("fault", "Faults");

    /// <summary>Frame, title block, bars, register crosses, key plans.</summary>
    public static Layer Frame { get; } = new("frame", "Frame");

    /// <summary>Areas that show nothing and can be picked on a screen: a fill that is not seen.</summary>
    public static Layer Hit { get; } = new("hit", "Areas to pick");

    /// <summary>Every layer, in the order files list them.</summary>
    public static IReadOnlyList<Layer> All { get; } =
    [
        Mixed, OutlineToCut, Visible, Hidden, Nosing, Centre, Construction, Dimension, Lettering, Housing, Mortice, Bore, Tenon, Waste, Tint, Site,
        Fault, Frame, Hit,
    ];

    /// <inheritdoc/>
    public override string ToString() => Id;
}
