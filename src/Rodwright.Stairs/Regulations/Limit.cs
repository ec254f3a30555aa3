using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations;

/// <summary>What a clause allows. Full size: a length is multiplied by the model scale where it is judged, unless it is the project's own tolerance.</summary>
public sealed record Limit
{
    private Limit() { }

    /// <summary>Least allowed, full size; null where free.</summary>
    public double? Least { get; private init; }

    /// <summary>Most allowed, full size; null where free.</summary>
    public double? Most { get; private init; }

    /// <summary>What the least is measured against instead of a number.</summary>
    public LimitReference Reference { get; private init; }

    /// <summary>The document's own figure where it is not metric, for example "7¾ in"; empty otherwise.</summary>
    public string Figure { get; private init; } = "";

    /// <summary>False for a tolerance of the project's own, which a model does not make finer.</summary>
    public bool Scales { get; private init; } = true;

    /// <summary>No limit: measured for information.</summary>
    public static Limit None { get; } = new();

    /// <summary>At least the straight steps' going.</summary>
    public static Limit AtLeastStraightGoing { get; } = new() { Reference = LimitReference.StraightGoing };

    /// <summary>At least the clear width of the flight.</summary>
    public static Limit AtLeastClearWidth { get; } = new() { Reference = LimitReference.ClearWidth };

    /// <summary>At least a value.</summary>
    public static Limit AtLeast(double least, string figure = "") => new() { Least = least, Figure = figure };

    /// <summary>At most a value.</summary>
    public static Limit AtMost(double most, string figure = "") => new() { Most = most, Figure = figure };

    /// <summary>From one value to another, both allowed.</summary>
    public static Limit Between(double least, double most, string figure = "") => new() { Least = least, Most = most, Figure = figure };

    /// <summary>Equal within a tolerance of the project's own (1 mm, setting-out.md 2.2), where a document says "equal" without a number.</summary>
    public static Limit Equal { get; } = new() { Most = 1, Scales = false };

    /// <summary>The limits on one stair.</summary>
    public LimitRange On(StairPlan plan, RuleUnit unit)
    {
        var scale = Scales && unit == RuleUnit.Millimetres ? plan.Job.ModelScale : 1;
        var least = Reference switch
        {
            LimitReference.StraightGoing => plan.Going,
            LimitReference.ClearWidth => plan.ClearWidth,
            _ => Least * scale,
        };
        return new(least, Most * scale);
    }

    /// <summary>The limit in words, for a rule and the stair it is judged on.</summary>
    public string Words(Rule rule, LimitRange range)
    {
        var against = Reference switch
        {
            LimitReference.StraightGoing => " (the straight going)",
            LimitReference.ClearWidth => " (the clear width)",
            _ => Figure.Length > 0 ? $" ({Figure})" : "",
        };
        return (range.Least, range.Most) switch
        {
            ({ } least, { } most) => $"{Number.Print(least, 2)} to {rule.Print(most)}{against}",
            ({ } least, null) => $"at least {rule.Print(least)}{against}",
            (null, { } most) => $"at most {rule.Print(most)}{against}",
            _ => "no limit",
        };
    }
}

/// <summary>What a limit refers to on the stair itself.</summary>
public enum LimitReference
{
    /// <summary>Nothing: the limit is a number.</summary>
    None,

    /// <summary>The going of the straight steps.</summary>
    StraightGoing,

    /// <summary>The clear width between the strings.</summary>
    ClearWidth,
}
