namespace Rodwright.Rod.Stages;

/// <summary>How a line is drawn.</summary>
public enum LineKind
{
    /// <summary>Lightly, to find others by.</summary>
    Faint,

    /// <summary>Firmly: an edge, a face or a cut.</summary>
    LinedIn,
}
