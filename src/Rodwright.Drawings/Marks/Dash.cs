using System.Collections.Immutable;

namespace Rodwright.Drawings.Marks;

/// <summary>
/// A line pattern: dash, gap, dash, gap... in pen widths, so that it follows the pen and never the drawing's scale.
/// A closed catalogue; compare by reference.
/// </summary>
public sealed class Dash
{
    private Dash(string id, string title, params ImmutableArray<double> lengths)
    {
        Id = id;
        Title = title;
        Lengths = lengths;
    }

    /// <summary>Stable kebab-case name.</summary>
    public string Id { get; }

    /// <summary>The name for people.</summary>
    public string Title { get; }

    /// <summary>Dash, gap, dash, gap..., each in widths of the pen that draws it; empty for an unbroken line.</summary>
    public ImmutableArray<double> Lengths { get; }

    /// <summary>Unbroken.</summary>
    public static Dash None { get; } = new("none", "Unbroken");

    /// <summary>Even short dashes: hidden edges.</summary>
    public static Dash Short { get; } = new("short", "Dashed", 10, 4);

    /// <summary>Long dashes with a clear gap: nosings.</summary>
    public static Dash Broken { get; } = new("broken", "Broken", 24, 6);

    /// <summary>Long dash, dot: centre lines. The dot is two pens long, so that it still shows on a coarse printer.</summary>
    public static Dash LongDot { get; } = new("long-dot", "Long dash, dot", 40, 8, 2, 8);

    /// <summary>Every pattern, in the order files list them.</summary>
    public static IReadOnlyList<Dash> All { get; } = [None, Short, Broken, LongDot];

    /// <inheritdoc/>
    public override string ToString() => Id;
}
