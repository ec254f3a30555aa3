using System.Collections.Immutable;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;

namespace Rodwright.Rod.Sheets;

/// <summary>The scales sheets are drawn at: the usual ones, and below them those that only small paper ever needs.</summary>
internal static class SheetScales
{
    /// <summary>Largest first.</summary>
    public static ImmutableArray<Scale> All(Units units) => units.IsInches ? InInches : Metric;

    private static ImmutableArray<Scale> Metric { get; } = [.. Scale.Usual, Scale.OneTo(100), Scale.OneTo(200), Scale.OneTo(500), Scale.OneTo(1000)];

    private static ImmutableArray<Scale> InInches { get; } = [.. Scale.UsualInches, Scale.OneTo(96), Scale.OneTo(192), Scale.OneTo(480), Scale.OneTo(960)];

    /// <summary>The scale wanted and all smaller ones; without a wish, all.</summary>
    public static IEnumerable<Scale> From(Scale? wanted, Units units) => wanted is null ? All(units) : All(units).Where(s => s.Ratio > wanted.Ratio).Prepend(wanted);

    /// <summary>The same with scales between for rooms, no larger than 1:10.</summary>
    public static IEnumerable<Scale> RoomFrom(Scale? wanted, Units units)
    {
        if (units.IsInches) return From(wanted, units).Where(s => s.Ratio >= 12).Concat(new[] { 64.0 }.Select(r => Scale.OneTo(r)).Where(s => wanted is null || s.Ratio > wanted.Ratio)).OrderBy(s => s.Ratio);
        var all = From(wanted, units).Where(s => s.Ratio >= 10).Concat(new[] { 15, 25, 30, 40, 75 }.Select(r => Scale.OneTo(r)).Where(s => wanted is null || s.Ratio > wanted.Ratio));
        return all.OrderBy(s => s.Ratio);
    }
}
