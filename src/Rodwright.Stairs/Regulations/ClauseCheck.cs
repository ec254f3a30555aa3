using Rodwright.Geometry;

namespace Rodwright.Stairs.Regulations;

/// <summary>One clause judged on one stair; for several measurements, by the one furthest off.</summary>
/// <param name="Clause">The row of the table.</param>
/// <param name="Outcome">How it came out.</param>
/// <param name="Measured">The measurement in the rule's unit; null when nothing was measured.</param>
/// <param name="Range">What is allowed on this stair.</param>
/// <param name="Limit">What is allowed, in words.</param>
/// <param name="Where">Where it was measured.</param>
/// <param name="Reason">Why it was not judged; empty otherwise.</param>
public sealed record ClauseCheck(Clause Clause, CheckOutcome Outcome, double? Measured, LimitRange Range, string Limit, string Where, string Reason)
{
    /// <summary>The unit the job's lengths are read in.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    /// <summary>The outcome as files and sheets write it: pass, fail, advice, not-checked.</summary>
    public string OutcomeWord => Outcome switch
    {
        CheckOutcome.Pass => "pass",
        CheckOutcome.Fail => "fail",
        CheckOutcome.Advice => "advice",
        _ => "not-checked",
    };

    /// <summary>The evidence as files write it: text-seen, secondary, memory, own.</summary>
    public string EvidenceWord => EvidenceWords.Code(Clause.Evidence);

    /// <summary>The unit as files write it: mm, degrees, or empty for a count.</summary>
    public string Unit => Clause.Rule.Unit switch
    {
        Rules.RuleUnit.Millimetres => "mm",
        Rules.RuleUnit.Degrees => "degrees",
        _ => "",
    };

    /// <summary>The measurement as a sheet prints it; a dash when there is none.</summary>
    public string MeasuredWords => Measured is { } value ? Clause.Rule.Print(value, Units) : "–";
}
