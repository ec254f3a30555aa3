using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Shops;

/// <summary>
/// A shop of common practice: usual sawn sizes of softwood, usual sheets, and prices and times that are examples and nothing more. It lets a list be planned before the shop's own file is written.
/// </summary>
public static class UsualShop
{
    private static readonly ImmutableArray<double> Lengths = [2400, 3000, 3600, 4200, 4800, 5400];

    /// <summary>The shop for a job: its timbers, and stock in the units the job is measured in.</summary>
    public static Shop For(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var (timber, sheet) = (job.Practice.Timber, job.Practice.RiserMaterial);
        var usual = Of(timber, sheet) with { Router = ShopRouter.Usual(job.Units) };
        if (!job.Units.IsInches) return usual;
        return usual with
        {
            Currency = "$", Saw = InchShop.Saw, Allowances = InchShop.Allowances, Boards = [.. InchShop.Timber(timber), .. sheet == timber || IsSheet(sheet) ? [] : InchShop.Timber(sheet)],
            Sheets = IsSheet(sheet) ? [.. InchShop.Sheets(sheet)] : [],
        };
    }

    /// <summary>The shop in metric sizes, its timber called as the job calls it.</summary>
    /// <param name="timber">Timber of strings, treads and newels.</param>
    /// <param name="sheet">Material of the risers.</param>
    public static Shop Of(string timber, string sheet) => new()
    {
        Name = "common practice, example prices",
        Boards =
        [
            .. Timber(timber), .. sheet == timber || IsSheet(sheet) ? [] : Timber(sheet),
        ],
        Sheets = [.. Sheets.Where(_ => IsSheet(sheet)).Select(t => new ShopSheet { Material = sheet, Thickness = t, Length = 2440, Width = 1220, Price = 10 + 2 * t })],
        Fixings =
        [
            new() { Name = "hardwood wedges, treads", Per = "tread-wedge", Price = 0.2 }, new() { Name = "hardwood wedges, risers", Per = "riser-wedge", Price = 0.2 }, new() { Name = "glue blocks", Per = "glue-block", Price = 0.3 },
            new() { Name = "pegs", Per = "peg", Price = 0.4 }, new() { Name = "screws", Per = "screw", Price = 0.05 }, new() { Name = "glue", Per = "step", Price = 0.8 },
        ],
        Work =
        [
            new() { Name = "setting out", Per = "stair", Minutes = 240 }, new() { Name = "cutting out", Per = "cut", Minutes = 1 }, new() { Name = "planing and thicknessing", Per = "piece", Minutes = 4 },
            new() { Name = "jointing and gluing up", Per = "glue-joint", Minutes = 10 }, new() { Name = "housing", Per = "housing", Minutes = 4 }, new() { Name = "morticing", Per = "mortice", Minutes = 15 },
            new() { Name = "tenoning", Per = "tenon", Minutes = 20 }, new() { Name = "rounding nosings", Per = "nosing", Minutes = 3 }, new() { Name = "putting together", Per = "step", Minutes = 20 },
            new() { Name = "cleaning up", Per = "piece", Minutes = 5 },
        ],
        Rates = new() { Hour = 40 },
    };

    private static IEnumerable<ShopBoard> Timber(string timber) =>
    [
        .. Boards(timber, 16, 100, 150, 225), .. Boards(timber, 25, 50, 75, 100, 150, 200, 225), .. Boards(timber, 32, 50, 75, 100, 150, 225, 275), .. Boards(timber, 38, 50, 100, 150, 225, 275),
        .. Boards(timber, 50, 50, 75, 100, 150, 225), .. Boards(timber, 75, 75, 100, 150), .. Boards(timber, 100, 100, 150), .. Boards(timber, 125, 125), .. Boards(timber, 150, 150),
    ];

    // Risers of timber come out of boards; plywood and its kin out of sheets.
    private static bool IsSheet(string material) => Words.Any(w => material.Contains(w, StringComparison.OrdinalIgnoreCase));

    private static readonly ImmutableArray<string> Words = ["ply", "board", "mdf"];

    private static readonly ImmutableArray<double> Sheets = [6, 9, 12, 15, 18, 22, 25];

    // Example prices: two pence for a square centimetre of section and metre, so that every price is a round number.
    private static IEnumerable<ShopBoard> Boards(string timber, double thickness, params double[] widths) =>
        widths.Select(w => new ShopBoard { Material = timber, Thickness = thickness, Width = w, Lengths = Lengths, PricePerMetre = Math.Round(thickness * w * 0.0008, 1), Grade = "joinery" });
}
