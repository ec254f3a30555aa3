using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Shops;

/// <summary>
/// The shop of common practice where work is measured in inches: rough boards by the quarter inch (4/4, 5/4 and so on), in even feet, priced by the board foot of 144 cubic inches; panels of
/// four feet by eight. Prices are examples.
/// </summary>
internal static class InchShop
{
    private const double BoardFootPrice = 8, CubicInchesInBoardFoot = 144, InchesInMetre = 1000 / Units.Inch;
    private static readonly ImmutableArray<double> Lengths = [.. new[] { 8, 10, 12, 14, 16 }.Select(feet => In(12 * feet))];

    /// <summary>Kerf and trims in whole sixteenths.</summary>
    public static ShopSaw Saw { get; } = new() { Kerf = In(0.125), EndTrim = In(0.5), EdgeTrim = In(0.125), LeastOffcut = In(24) };

    /// <summary>What is left on for planing and cutting to length.</summary>
    public static ShopAllowances Allowances { get; } = new()
    {
        Planing = In(0.125), PlaningOver = In(0.1875), PlaningLimit = In(2), Length = In(0.5), StringEnd = In(1.5), NewelEnd = In(1.5), GlueEnd = In(0.375), GlueBack = In(0.375),
    };

    /// <summary>Rough boards of a timber.</summary>
    public static IEnumerable<ShopBoard> Timber(string timber) =>
    [
        .. Boards(timber, 1, 4, 6, 8, 10, 12), .. Boards(timber, 1.25, 4, 6, 8, 10, 12), .. Boards(timber, 1.5, 4, 6, 8, 10, 12), .. Boards(timber, 2, 2, 3, 4, 6, 8, 10),
        .. Boards(timber, 3, 3, 4, 6), .. Boards(timber, 4, 4, 6), .. Boards(timber, 5, 5), .. Boards(timber, 6, 6),
    ];

    /// <summary>Panels of a sheet material.</summary>
    public static IEnumerable<ShopSheet> Sheets(string sheet) =>
        new[] { 0.25, 0.375, 0.5, 0.625, 0.75, 1 }.Select(t => new ShopSheet { Material = sheet, Thickness = In(t), Length = In(96), Width = In(48), Price = 20 + 60 * t });

    private static IEnumerable<ShopBoard> Boards(string timber, double thickness, params double[] widths) => widths.Select(w => new ShopBoard
    {
        Material = timber, Thickness = In(thickness), Width = In(w), Lengths = Lengths, PricePerMetre = Math.Round(thickness * w * InchesInMetre / CubicInchesInBoardFoot * BoardFootPrice, 2), Grade = "select",
    });

    private static double In(double inches) => inches * Units.Inch;
}
