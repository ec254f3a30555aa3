using System.Collections.Immutable;
using Rodwright.Drawings.Paper;

namespace Rodwright.Rod.Sheets;

/// <summary>The scales sheets are drawn at: the usual ones, and below them those that only small paper ever needs.</summary>
internal static class SheetScales
{
    /// <summary>Largest first.</summary>
    public static ImmutableArray<Scale> All { get; } = [.. Scale.Usual, Scale.OneTo(100), Scale.OneTo(200), Scale.OneTo(500), Scale.OneTo(1000)];

    /// <summary>The scale wanted and all smaller ones; without a wish, all.</summary>
    public static IEnumerable<Scale> From(Scale? wanted) => wanted is null ? All : All.Where(s => s.Ratio > wanted.Ratio).Prepend(wanted);

    /// <summary>The same with scales between for rooms, no larger than 1:10.</summary>
    public static IEnumerable<Scale> RoomFrom(Scale? wanted)
    {
        var all = From(wanted).Where(s => s.Ratio >= 10).Concat(new[] { 15, 25, 30, 40, 75 }.Select(r => Scale.OneTo(r)).Where(s => wanted is null || s.Ratio > wanted.Ratio));
        return all.OrderBy(s => s.Ratio);
    }
}
