using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Measures one thing on a stair and judges nothing: limits belong to the tables. One instance per rule, in <see cref="RuleCatalogue"/>.</summary>
public abstract class Rule
{
    private protected Rule(string id, string code, string title, RuleUnit unit)
    {
        Id = id;
        Code = code;
        Title = title;
        Unit = unit;
    }

    /// <summary>Stable id, for example tapered-going.</summary>
    public string Id { get; }

    /// <summary>Stable code of the finding when a limit is not kept, RW3xxx.</summary>
    public string Code { get; }

    /// <summary>What is measured, in the trade's words.</summary>
    public string Title { get; }

    /// <summary>What it is counted in.</summary>
    public RuleUnit Unit { get; }

    /// <summary>Whether a shop's own table may ask for it without a limit: what is not measured, or was not when such tables were first written.</summary>
    internal virtual bool MayBeUnlimited => false;

    /// <summary>The measurements; none where the stair has no such thing, and then <see cref="Nothing"/> says why.</summary>
    public abstract IEnumerable<Measurement> Measure(StairPlan plan);

    /// <summary>Why a stair may have nothing to measure.</summary>
    public virtual string Nothing => "this stair has none";

    /// <summary>What would bring the measurement within a limit, with the numbers that would do. Its remedies are tried by the judge before they are offered.</summary>
    /// <param name="plan">The stair.</param>
    /// <param name="range">What is allowed on this stair, by every clause the rule is measured for.</param>
    /// <param name="worst">The measurement that is furthest off.</param>
    public abstract Advice Remedy(StairPlan plan, LimitRange range, Measurement worst);

    /// <summary>A value in the rule's unit; lengths in the unit of a job, a fraction not on a sixteenth of an inch with its decimals.</summary>
    public string Print(double value, Units units) => Unit switch
    {
        RuleUnit.Millimetres => units.Judged(value),
        RuleUnit.Degrees => Number.Print(value, 2) + "°",
        _ => Number.Print(value, 2),
    };
}
