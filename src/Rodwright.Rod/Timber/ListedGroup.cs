using Rodwright.Geometry;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Timber;

/// <summary>Pieces of one kind that are cut alike: one line of the list.</summary>
/// <param name="Pieces">The pieces, in the kit's order.</param>
public sealed record ListedGroup(IReadOnlyList<ListedPiece> Pieces)
{
    /// <summary>The piece that stands for all.</summary>
    public ListedPiece First => Pieces[0];

    /// <summary>Their marks: "T5 to T11".</summary>
    public string Marks => Equal.Marks;

    /// <summary>What they are called.</summary>
    public string Name => PartsList.NameOf(Equal);

    /// <summary>Strips and layers of one size, with how many of each all the pieces take.</summary>
    public IEnumerable<(Wood Wood, int Count)> Strips => First.Woods.GroupBy(w => (w.SawnLength, w.SawnWidth, w.SawnThickness, w.Width)).Select(g => (g.First(), g.Count() * Pieces.Count));

    private EqualParts Equal => new([.. Pieces.Select(p => p.Part)]);

    /// <summary>The groups of a list, in the order their first ones come.</summary>
    public static IReadOnlyList<ListedGroup> Of(CuttingList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var groups = new List<List<ListedPiece>>();
        foreach (var piece in list.Pieces)
        {
            if (groups.Find(g => AreAlike(g[0], piece)) is { } group) group.Add(piece);
            else groups.Add([piece]);
        }
        return [.. groups.Select(g => new ListedGroup(g))];
    }

    private static bool AreAlike(ListedPiece a, ListedPiece b) => a.Part.Kind == b.Part.Kind && a.Part.Material == b.Part.Material && a.Stock == b.Stock && a.Woods.Length == b.Woods.Length
        && Near(a.Part.Blank.Length, b.Part.Blank.Length) && Near(a.Part.Blank.Width, b.Part.Blank.Width) && Near(a.Part.Blank.Thickness, b.Part.Blank.Thickness)
        && a.Woods.Zip(b.Woods).All(w => Near(w.First.Length, w.Second.Length) && Near(w.First.SawnLength, w.Second.SawnLength) && Near(w.First.SawnWidth, w.Second.SawnWidth));

    private static bool Near(double a, double b) => Math.Abs(a - b) < Tolerance.Joint;
}
