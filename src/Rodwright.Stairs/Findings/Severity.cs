namespace Rodwright.Stairs.Findings;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing is wrong.</summary>
    Note,

    /// <summary>Advice is not followed, or something must be checked by hand.</summary>
    Advice,

    /// <summary>A limit of a regulation or of practice is not kept; the stair still exists and is drawn.</summary>
    Breach,

    /// <summary>The input is wrong or the geometry cannot exist; nothing is drawn.</summary>
    Error,
}
