namespace Rodwright.Drawings.Sheets;

/// <summary>The ways a sheet can fail to read.</summary>
public enum SheetFaultKind
{
    /// <summary>Two pieces of lettering share paper.</summary>
    TextOverText,

    /// <summary>A heavy line runs through lettering.</summary>
    TextOverLine,

    /// <summary>A mark leaves the frame.</summary>
    OutsideFrame,

    /// <summary>Lettering uses a character that the face has not, which prints as an empty box.</summary>
    MissingLetter,
}
