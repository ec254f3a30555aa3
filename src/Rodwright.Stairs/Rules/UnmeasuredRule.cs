using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Something a regulation asks for that this version cannot measure: it stands in every report as not checked.</summary>
public sealed class UnmeasuredRule : Rule
{
    internal UnmeasuredRule(string id, string title, string reason) : base(id, "RW3090", title, RuleUnit.Millimetres) => Nothing = reason;

    /// <inheritdoc/>
    internal override bool MayBeUnlimited => true;

    /// <inheritdoc/>
    public override string Nothing { get; }

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) => [];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) => "check it by hand";
}
