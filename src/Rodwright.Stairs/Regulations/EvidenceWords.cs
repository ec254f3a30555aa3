namespace Rodwright.Stairs.Regulations;

/// <summary>The mark beside a number: how well it is known. One home for files, sheets and pages.</summary>
public static class EvidenceWords
{
    /// <summary>As files write it: text-seen, secondary, memory, own.</summary>
    public static string Code(Evidence evidence) => evidence switch
    {
        Evidence.TextSeen => "text-seen",
        Evidence.Secondary => "secondary",
        Evidence.Own => "own",
        _ => "memory",
    };

    /// <summary>As people read it.</summary>
    public static string Print(Evidence evidence) => evidence switch
    {
        Evidence.TextSeen => "text seen",
        Evidence.Secondary => "other published text",
        Evidence.Own => "the shop's own",
        _ => "not checked against the document",
    };
}
