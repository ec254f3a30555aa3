namespace Rodwright.Stairs.Rules;

/// <summary>One thing measured on a stair.</summary>
/// <param name="Where">On what: "straight steps", "step 4", "stair".</param>
/// <param name="Value">In the rule's unit.</param>
public readonly record struct Measurement(string Where, double Value);
