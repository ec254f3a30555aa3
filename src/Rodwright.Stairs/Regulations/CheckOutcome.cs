namespace Rodwright.Stairs.Regulations;

/// <summary>How one clause came out.</summary>
public enum CheckOutcome
{
    /// <summary>Kept.</summary>
    Pass,

    /// <summary>Not kept: the stair does not follow the regulation.</summary>
    Fail,

    /// <summary>Not kept, and only advised.</summary>
    Advice,

    /// <summary>Not judged; the reason stands beside it.</summary>
    NotChecked,
}
