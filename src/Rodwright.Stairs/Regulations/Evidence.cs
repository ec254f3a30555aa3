namespace Rodwright.Stairs.Regulations;

/// <summary>How well a number of a regulation is known; travels to every sheet that prints it.</summary>
public enum Evidence
{
    /// <summary>The clause itself was read.</summary>
    TextSeen,

    /// <summary>Another published text states the same number; the clause itself was not read.</summary>
    Secondary,

    /// <summary>From memory: print as "not checked against the document".</summary>
    Memory,

    /// <summary>A number the shop has set itself; no document is claimed.</summary>
    Own,
}
