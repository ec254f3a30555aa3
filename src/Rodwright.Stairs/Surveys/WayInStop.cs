namespace Rodwright.Stairs.Surveys;

/// <summary>A place on the way in through the house at which a long piece may stick.</summary>
public sealed record WayInStop
{
    /// <summary>Door or turn.</summary>
    public WayInKind Kind { get; init; }

    /// <summary>What it is called; empty for its kind.</summary>
    public string Name { get; init; } = "";

    /// <summary>Clear width of the door, or of the passage before the turn, mm.</summary>
    public double Width { get; init; }

    /// <summary>Clear width of the passage after the turn, mm; null for a door.</summary>
    public double? WidthOut { get; init; }

    /// <summary>Clear height of the door, or of both passages at the turn, mm.</summary>
    public double Height { get; init; }

    /// <summary>Its name, or what it is.</summary>
    public string Words => Name.Length > 0 ? Name : Kind == WayInKind.Door ? "door" : "turn";
}

/// <summary>What stands in the way.</summary>
public enum WayInKind
{
    /// <summary>An opening passed straight through.</summary>
    Door,

    /// <summary>A square turn from one passage into another.</summary>
    Turn,
}
