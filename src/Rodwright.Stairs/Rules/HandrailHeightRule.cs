using Rodwright.Geometry;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Height of every handrail's top plumb above each nosing it runs over, on open sides and on walls.</summary>
public sealed class HandrailHeightRule : Rule
{
    private HandrailHeightRule() : base("handrail", "RW3040", "the height of the handrail", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static HandrailHeightRule Instance { get; } = new();

    /// <inheritdoc/>
    internal override bool MayBeUnlimited => true;

    /// <inheritdoc/>
    public override string Nothing => "no handrail is set out (balustrade): check sides and height by hand";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) => Over(plan, k => k is RailKind.Flight or RailKind.Wall);

    /// <summary>Rails of some kinds over their nosings.</summary>
    internal static IEnumerable<Measurement> Over(StairPlan plan, Func<RailKind, bool> kinds) =>
        (BalustradePlan.Of(plan)?.Rails ?? []).Where(r => kinds(r.Kind))
            .SelectMany(r => r.Heights.Where(h => h.Riser > 0).Select(h => new Measurement($"{r.Name}, nosing {Number.Print(h.Riser, 0)}", h.Above)));

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) => Raised(plan, range, worst);

    /// <summary>The rails raised or lowered as far as the worst is off.</summary>
    internal static Advice Raised(StairPlan plan, LimitRange range, Measurement worst)
    {
        var height = plan.Job.Practice.RailHeight;
        var wanted = worst.Value < range.Least ? plan.Units.Up(height + range.Least.Value - worst.Value - Tolerance.Same) : plan.Units.Down(height + range.Most!.Value - worst.Value + Tolerance.Same);
        return Advice.Of($"set the rails {plan.Units.With(wanted)} above the pitch line (practice.railHeight)", Way.Of(Findings.Remedy.Of($"rails {plan.Units.Print(wanted)} high", FieldChange.To("practice.railHeight", wanted))));
    }
}
