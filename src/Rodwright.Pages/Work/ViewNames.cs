namespace Rodwright.Pages.Work;

/// <summary>The views of a job, by their names in addresses.</summary>
public static class ViewNames
{
    /// <summary>The rod on the board.</summary>
    public const string Rod = "rod";

    /// <summary>The room as it was measured.</summary>
    public const string Survey = "survey";

    /// <summary>The stair in the round.</summary>
    public const string Solid = "round";

    /// <summary>What else would fit: the wall of proposals.</summary>
    public const string Proposals = "proposals";

    /// <summary>The parts list.</summary>
    public const string Parts = "parts";

    /// <summary>Cutting list, boards and price.</summary>
    public const string Timber = "timber";

    /// <summary>The order of assembly, stage by stage.</summary>
    public const string Assembly = "assembly";

    /// <summary>Each piece's drawing for the machine.</summary>
    public const string Machining = "machining";

    /// <summary>The regulation, clause by clause.</summary>
    public const string Regulation = "regulation";

    /// <summary>The proof, joint by joint.</summary>
    public const string Proof = "proof";

    /// <summary>The sheets.</summary>
    public const string Sheets = "sheets";

    /// <summary>The revisions.</summary>
    public const string History = "revisions";

    /// <summary>All, in the order of the work, with what each is called.</summary>
    public static IReadOnlyList<(string Name, string Title)> All { get; } =
        [(Survey, "Survey"), (Proposals, "Proposals"), (Rod, "Rod"), (Solid, "In the round"), (Parts, "Parts"), (Timber, "Timber"), (Machining, "Machining"), (Assembly, "Assembly"), (Regulation, "Regulation"), (Proof, "Proof"), (Sheets, "Sheets"), (History, "Revisions")];

    /// <summary>The view of an address; the rod for a name that is none.</summary>
    public static string Known(string? name) => All.FirstOrDefault(v => v.Name == name).Name ?? Rod;

    /// <summary>What a view is called.</summary>
    public static string Title(string name) => All.First(v => v.Name == name).Title;
}
