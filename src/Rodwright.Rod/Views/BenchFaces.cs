using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Views;

/// <summary>Which faces of a newel carry the bench marks.</summary>
internal static class BenchFaces
{
    /// <summary>The face side takes a string, the face edge next to it takes treads: indices of two neighbouring faces.</summary>
    public static (int Side, int Edge) OfNewel(Part part)
    {
        int Count(int face, CutKind kind) => part.Cuts.Count(c => c.Face == face && c.Kind == kind);
        var side = Enumerable.Range(0, 4).OrderByDescending(i => Math.Min(1, Count(i, CutKind.Mortice))).ThenByDescending(i => Count((i + 1) % 4, CutKind.Housing) + Count((i + 3) % 4, CutKind.Housing)).First();
        var edge = new[] { (side + 1) % 4, (side + 3) % 4 }.MaxBy(i => Count(i, CutKind.Housing));
        return (side, edge);
    }
}
