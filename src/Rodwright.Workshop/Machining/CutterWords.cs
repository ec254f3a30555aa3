using Rodwright.Geometry;
using Rodwright.Rod.Machining;
using Rodwright.Stairs.Shops;

namespace Rodwright.Workshop.Machining;

/// <summary>What a cutter leaves in a piece, in a sentence for the one who finishes it.</summary>
public static class CutterWords
{
    /// <summary>The sentence.</summary>
    /// <param name="left">What is left, place by place.</param>
    /// <param name="router">The cutter.</param>
    /// <param name="units">Of the job.</param>
    public static string Of(IReadOnlyCollection<LeftByCutter> left, ShopRouter router, Units units)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(router);
        ArgumentNullException.ThrowIfNull(units);
        var cutter = $"With a cutter of {units.With(router.Cutter)}";
        string[] told =
        [
            .. Count(LeftKind.Square, "corner to square by hand", "corners to square by hand"), .. Count(LeftKind.MayStay, "that may stay round", "that may stay round"),
            .. Count(LeftKind.Narrow, "place it does not go into", "places it does not go into"), .. Count(LeftKind.TightArc, "arc tighter than it", "arcs tighter than it"),
            .. Count(LeftKind.NotFollowed, "place to look at before it is cut", "places to look at before they are cut"),
        ];
        return told.Length == 0 ? $"{cutter} no inside corner is left." : $"{cutter}: {string.Join(", ", told)}. Where and how much: machining.csv.";

        IEnumerable<string> Count(LeftKind kind, string one, string many) =>
            left.Count(l => l.Kind == kind) is var n && n > 0 ? [$"{Number.Print(n, 0)} {(n == 1 ? one : many)}"] : [];
    }
}
