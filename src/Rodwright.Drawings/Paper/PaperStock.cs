using System.Globalization;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Paper;

/// <summary>What the printer holds: sheets of one size, or a roll that gives any length.</summary>
public sealed record PaperStock
{
    /// <summary>Longest page a PDF file can carry without special units: 14 400 points, a little over 5 m.</summary>
    public const double LongestPage = 14400 * 25.4 / 72;

    private const double ShortestSide = 100;

    private PaperStock(string name, double width, double? height)
    {
        Name = name;
        Width = width;
        Height = height;
    }

    /// <summary>A roll 610 wide.</summary>
    public static PaperStock Roll610 { get; } = new("roll 610", 610, null);

    /// <summary>A roll 914 wide.</summary>
    public static PaperStock Roll914 { get; } = new("roll 914", 914, null);

    /// <summary>Sheets by the names they are asked for with, capitals not counted; a longer name before one it begins with.</summary>
    private static IReadOnlyList<(string Upper, PaperSize Size)> Sheets { get; } =
    [
        .. PaperSize.Series.Concat(PaperSize.NorthAmerican).Select(s => (s.Name.ToUpperInvariant(), s)).OrderByDescending(s => s.Item1.Length),
        ("LEDGER", PaperSize.NorthAmerican.First(s => s.Name == "Tabloid")),
    ];

    /// <summary>The name, as A3 or roll 610.</summary>
    public string Name { get; }

    /// <summary>Width of a sheet, or across a roll, mm.</summary>
    public double Width { get; }

    /// <summary>Height of a sheet, mm; null for a roll.</summary>
    public double? Height { get; }

    /// <summary>Whether length is cut as needed.</summary>
    public bool IsRoll => Height is null;

    /// <summary>Sheets of one size.</summary>
    public static PaperStock Of(PaperSize size) => new(size.Name, size.Width, size.Height);

    /// <summary>
    /// The page for a drawing that needs the given paper, frame and margins included. Sheets give their own size, turned when only that
    /// lets the drawing fit; a roll runs along x, its width along y, and is cut to the length needed, up to <see cref="LongestPage"/>.
    /// </summary>
    public PaperSize PageFor(double width, double height)
    {
        if (Height is not { } sheetHeight)
        {
            var length = Math.Ceiling(Math.Clamp(width, ShortestSide, LongestPage - 1));
            return new($"{Name}, {Number.Print(length, 0)} long", length, Width);
        }
        var page = new PaperSize(Name, Width, sheetHeight);
        var turned = page with { Width = page.Height, Height = page.Width };
        return !Fits(page) && Fits(turned) ? turned : page;

        bool Fits(PaperSize p) => width <= p.Width && height <= p.Height;
    }

    /// <summary>Reads "A3", "A3 portrait", "A1 landscape", "610", "roll 914" "Letter", "Tabloid", "Arch C", "ANSI D" or "WIDTHxHEIGHT" in millimetres, or in inches where they say so (24inx36in). Larger sheets than A4 and letter lie down unless told to stand.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="stock">The paper; A4 when reading failed.</param>
    /// <param name="reason">Why reading failed; empty when it did not.</param>
    public static bool TryParse(string? text, out PaperStock stock, out string reason)
    {
        stock = Of(PaperSize.A4);
        reason = "";
        var joined = string.Join(' ', (text ?? "").ToUpperInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (joined is "610" or "ROLL 610") stock = Roll610;
        else if (joined is "914" or "ROLL 914") stock = Roll914;
        else if (Sheets.FirstOrDefault(s => joined == s.Upper || joined.StartsWith(s.Upper + " ", StringComparison.Ordinal)) is { Size: { } size } named)
        {
            switch (joined[named.Upper.Length..].Trim())
            {
                case "": stock = Of(size.Stands ? size : size.Landscape); break;
                case "PORTRAIT": stock = Of(size); break;
                case "LANDSCAPE": stock = Of(size.Landscape); break;
                case var way: reason = $"“{way.ToLowerInvariant()}” does not say how {size.Name} lies: write portrait or landscape"; break;
            }
        }
        else reason = TrySize(joined, out stock);
        return reason.Length == 0;
    }

    private static string TrySize(string text, out PaperStock stock)
    {
        stock = Of(PaperSize.A4);
        var parts = text.Split('X', '×');
        if (parts.Length != 2 || !Read(parts[0], out var width) || !Read(parts[1], out var height))
            return $"“{text.ToLowerInvariant()}” is no paper known here: write A4 to A0, Letter, Tabloid, Arch C to E, ANSI C to E, 610, 914 or a size like 594x1200 or 24inx36in";
        if (Math.Min(width, height) < ShortestSide)
            return $"{Number.Print(Math.Min(width, height))} mm is too narrow to draw on: give at least {Number.Print(ShortestSide)} mm each way";
        if (Math.Max(width, height) > LongestPage)
            return $"{Number.Print(Math.Max(width, height))} mm is longer than a page can be: give at most {Number.Print(LongestPage)} mm each way";
        stock = new($"{Number.Print(width)}x{Number.Print(height)}", width, height);
        return "";

        // A figure with an inch mark or word is inches, any other millimetres.
        static bool Read(string part, out double value) => part.AsSpan().ContainsAny("\"'”″′’N") ? Units.Inches.TryRead(part, out value) && value > 0 :
            double.TryParse(part.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
    }
}
