using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Both lengths of a quarter landing, from a riser face to the wall string it runs up to.</summary>
public sealed class LandingRule : Rule
{
    private LandingRule() : base("landing", "RW3026", "the length of the landing", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static LandingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no landing between its flights";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        if (plan.Turn is not { Kind: TurnKind.Landing } turn) yield break;
        // The outer boundary turns once, in the corner of the walls.
        var corner = plan.Outer.Edges[0].To;
        yield return new("landing, way in", plan.Riser(turn.FirstLine).Outer.DistanceTo(corner));
        yield return new("landing, way out", plan.Riser(turn.LastLine).Outer.DistanceTo(corner));
    }

    /// <inheritdoc/>
    public override string Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        $"set the landing's risers {Mm(range.Least!.Value - worst.Value)} further out (firstRiser, lastRiser), or make the stair wider";
}
