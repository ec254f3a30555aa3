namespace Rodwright.Stairs.Surveys;

/// <summary>A door or window in a wall, to be kept clear.</summary>
public sealed record WallOpening
{
    /// <summary>Door or window.</summary>
    public OpeningKind Kind { get; init; }

    /// <summary>What it is called on sheets; empty for "door" or "window".</summary>
    public string Name { get; init; } = "";

    /// <summary>From the beginning of its wall to its near side, mm.</summary>
    public double At { get; init; }

    /// <summary>Width of the opening, mm.</summary>
    public double Width { get; init; }

    /// <summary>Height of the sill above the lower finished floor, mm; 0 for a door.</summary>
    public double Sill { get; init; }

    /// <summary>Height of the head above the lower finished floor, mm.</summary>
    public double Head { get; init; }

    /// <summary>Where the leaf swings.</summary>
    public Swing Swing { get; init; } = Swing.Out;

    /// <summary>Depth of floor to keep clear before it, mm; null takes the usual depth.</summary>
    public double? Clear { get; init; }

    /// <summary>
    /// Depth of floor to keep clear, mm: as given, or before a door 400 (the depth asked for over a bottom landing, standards.md 1c), and beyond its leaf where it swings in; nothing
    /// before a window.
    /// </summary>
    public double Depth => Clear ?? (Kind == OpeningKind.Window ? 0 : 400 + (Swing == Swing.In ? Width : 0));

    /// <summary>Its name, or what it is.</summary>
    public string Words => Name.Length > 0 ? Name : Kind == OpeningKind.Door ? "door" : "window";
}

/// <summary>What kind of opening.</summary>
public enum OpeningKind
{
    /// <summary>To walk through.</summary>
    Door,

    /// <summary>To look through.</summary>
    Window,
}

/// <summary>Where a leaf swings.</summary>
public enum Swing
{
    /// <summary>Away from the room, or not at all.</summary>
    Out,

    /// <summary>Into the room.</summary>
    In,
}
