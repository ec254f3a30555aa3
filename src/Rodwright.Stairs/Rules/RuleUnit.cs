namespace Rodwright.Stairs.Rules;

/// <summary>What a rule's measurements are counted in.</summary>
public enum RuleUnit
{
    /// <summary>A length: its limits are multiplied by the model scale.</summary>
    Millimetres,

    /// <summary>An angle: the same at every scale.</summary>
    Degrees,

    /// <summary>A number of things: the same at every scale.</summary>
    Count,
}
