using System.CommandLine;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;
using Rodwright.Rod;
using Rodwright.Rod.Board;

namespace Rodwright.Commands;

/// <summary>Paper and scale on a command line.</summary>
internal static class PrintOptions
{
    /// <summary>Refuses a paper or a scale that cannot be read, or on which nothing can be tiled, before anything is done.</summary>
    public static void Validate(Option<string?> paper, Option<string?> scale)
    {
        scale.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } text && !Scale.TryParse(text, out _, out var reason)) result.AddError("--scale: " + reason);
        });
        paper.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is not { } text) return;
            if (PaperStock.TryParse(text, out var stock, out var reason)) reason = TooSmall(stock);
            if (reason.Length > 0) result.AddError("--paper: " + reason);
        });
    }

    /// <summary>How to print by what was asked, without date.</summary>
    public static RodStyle Style(string? paper, string? scale, Units units)
    {
        PaperStock.TryParse(paper ?? PaperFit.Default(units).Name, out var stock, out _);
        Scale? wanted = scale is { } text && Scale.TryParse(text, out var read, out _) ? read : null;
        return new(stock, wanted, "");
    }

    private static string TooSmall(PaperStock stock) => Math.Min(stock.Width, stock.Height ?? stock.Width) < TileGrid.LeastSide
        ? $"{stock.Name} is too small to tile on; give at least {Number.Print(TileGrid.LeastSide)} mm each way" : "";
}
