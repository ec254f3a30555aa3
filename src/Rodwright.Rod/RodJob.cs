using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Shops;

namespace Rodwright.Rod;

/// <summary>What every sheet is drawn from: the stair, its proof, and how to print.</summary>
/// <param name="Stair">The stair as set out, of its own hand.</param>
/// <param name="Proof">Its proof.</param>
/// <param name="Style">Paper, scale, date.</param>
public sealed record RodJob(Stair Stair, ProofReport Proof, RodStyle Style)
{
    private readonly ShopRouter? router;

    /// <summary>Cutters of machine and hand router; usual ones where none were given.</summary>
    public ShopRouter Router { get => router ?? ShopRouter.Usual(Units); init => router = value; }

    /// <summary>The unit of every figure on the sheets.</summary>
    public Units Units => Stair.Units;
}
