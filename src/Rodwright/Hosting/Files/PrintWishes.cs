using Rodwright.Drawings.Paper;
using Rodwright.Geometry;
using Rodwright.Rod;

namespace Rodwright.Hosting.Files;

/// <summary>How sheets are wanted, as the address says it.</summary>
/// <param name="Paper">As the command line's --paper.</param>
/// <param name="Scale">As the command line's --scale; empty for the largest that fits.</param>
/// <param name="Booklet">1 for the step-by-step booklet as well.</param>
internal sealed record PrintWishes(string? Paper, string? Scale, int? Booklet)
{
    /// <summary>Paper and scale to print on; null, and the answer that says why, when the address asks for what there is not.</summary>
    public RodStyle? Read(Units units, TimeProvider time, out IResult? refusal)
    {
        refusal = null;
        if (!PaperStock.TryParse(Paper ?? Rod.Board.PaperFit.Default(units).Name, out var stock, out var why) || Math.Min(stock.Width, stock.Height ?? stock.Width) < TileGrid.LeastSide)
            refusal = Results.Problem($"paper: {(why.Length > 0 ? why : "too small to tile on")}", statusCode: StatusCodes.Status400BadRequest);
        Scale? wanted = null;
        if (refusal is null && Scale is { Length: > 0 } text)
        {
            if (Drawings.Paper.Scale.TryParse(text, out var read, out var no)) wanted = read;
            else refusal = Results.Problem($"scale: {no}", statusCode: StatusCodes.Status400BadRequest);
        }
        if (refusal is not null) return null;
        return new(stock, wanted, JobFiles.Today(time).ToString("O", null), "A");
    }
}
