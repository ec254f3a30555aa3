using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Timber;

/// <summary>Two pieces with slanted ends that lie head to tail on a board: one slanting cut parts them, where two square ones would waste what lies between. Grain along both.</summary>
/// <param name="First">The piece that comes first.</param>
/// <param name="FirstShape">As it lies.</param>
/// <param name="Second">The piece behind it.</param>
/// <param name="SecondShape">As it lies, from the place where its own box begins.</param>
/// <param name="Behind">Where that is, mm from the beginning of the first.</param>
internal sealed record NestedPair(Wood First, SawnShape FirstShape, Wood Second, SawnShape SecondShape, double Behind)
{
    /// <summary>Saves less than this, mm, and it is not worth it.</summary>
    private const double Worth = 40;

    /// <summary>What both take of the board, mm.</summary>
    public double Length => Math.Max(FirstShape.Length, Behind + SecondShape.Length);

    /// <summary>mm.</summary>
    public double Width => Math.Max(FirstShape.Width, SecondShape.Width);

    /// <summary>Its name in a problem.</summary>
    public string Id => $"{First.Id}|{Second.Id}";

    /// <summary>The pairs worth having among some pieces of wood, most saved first; every piece in one pair at most.</summary>
    /// <param name="woods">Of one material and thickness.</param>
    /// <param name="kerf">Of the saw, mm, square to the cut.</param>
    /// <param name="mark">What lengths are marked out to, mm: the second begins at a whole number of these.</param>
    /// <param name="difference">By how much their sawn widths may differ at most, mm: the narrower is ripped to width once they are parted.</param>
    public static ImmutableArray<NestedPair> Of(IReadOnlyList<Wood> woods, double kerf, double mark, double difference)
    {
        var slanted = woods.Where(w => w.Shape is not null).ToList();
        var found = new List<(double Saved, NestedPair Pair)>();
        for (var i = 0; i < slanted.Count; i++)
            for (var j = i + 1; j < slanted.Count; j++)
            {
                var (a, b) = (slanted[i], slanted[j]);
                if (Math.Abs(a.SawnWidth - b.SawnWidth) > difference) continue;
                var pair = Closest(a, b, kerf, mark);
                // As length of the wider one's strip.
                var saved = ((a.SawnLength + kerf) * a.SawnWidth + (b.SawnLength + kerf) * b.SawnWidth) / pair.Width - pair.Length - kerf;
                if (saved >= Worth) found.Add((saved, pair));
            }
        var taken = new HashSet<Wood>(ReferenceEqualityComparer.Instance);
        var pairs = ImmutableArray.CreateBuilder<NestedPair>();
        foreach (var (_, pair) in found.OrderByDescending(f => Math.Round(f.Saved, 3)).ThenBy(f => f.Pair.Id, StringComparer.Ordinal))
        {
            if (taken.Contains(pair.First) || taken.Contains(pair.Second)) continue;
            taken.Add(pair.First);
            taken.Add(pair.Second);
            pairs.Add(pair);
        }
        return pairs.ToImmutable();
    }

    /// <summary>The shortest way of laying one behind the other; turned end for end and over as need be.</summary>
    private static NestedPair Closest(Wood a, Wood b, double kerf, double mark)
    {
        NestedPair? best = null;
        var width = Math.Max(a.SawnWidth, b.SawnWidth);
        foreach (var (first, second) in new[] { (a, b), (b, a) })
            foreach (var one in Ways(first.Shape!))
                foreach (var other in Ways(second.Shape!))
                {
                    var pair = new NestedPair(first, one, second, other, Math.Ceiling(Distance(one.Across(width), other.Across(width), kerf) / mark - 1e-6) * mark);
                    if (best is null || pair.Length < best.Length - Tolerance.Joint) best = pair;
                }
        return best!;
    }

    private static SawnShape[] Ways(SawnShape shape) => [shape, shape.Turned(), shape.Over(), shape.Turned().Over()];

    /// <summary>How far behind the beginning of one the other may begin: the first's far side and the second's near side are chains of straight cuts, so what matters is at their corners.</summary>
    private static double Distance(SawnShape one, SawnShape other, double kerf)
    {
        var heights = one.Ring.Concat(other.Ring).Select(p => p.Y).Distinct().Order().ToList();
        var (behind, slant) = (0.0, 0.0);
        for (var i = 0; i < heights.Count; i++)
        {
            behind = Math.Max(behind, one.At(heights[i]).Right - other.At(heights[i]).Left);
            if (i == 0 || heights[i] - heights[i - 1] < Tolerance.Joint) continue;
            // Between corners both sides are straight: looked at a little inside, where level sides do not count.
            var (low, high) = (heights[i - 1] + Tolerance.Same * 2, heights[i] - Tolerance.Same * 2);
            slant = Math.Max(slant, Math.Max(Math.Abs(one.At(high).Right - one.At(low).Right), Math.Abs(other.At(high).Left - other.At(low).Left)) / (high - low));
        }
        // A kerf square to the steepest cut is longer along the board.
        return behind + kerf * Math.Sqrt(1 + slant * slant);
    }
}
