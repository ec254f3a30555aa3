using System.Text;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Joinery;
using Rodwright.Joinery.Timber;
using Rodwright.Rod;
using Rodwright.Rod.Board;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Timber;
using Rodwright.Stairs.Shops;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Shops;

namespace Rodwright.Hosting.Files;

/// <summary>The timber of a revision as files, by the shop as it is kept now; and the shop's own file.</summary>
internal static class TimberDownloads
{
    /// <summary>Adds them: to the group of a revision, and to the pages.</summary>
    public static void Map(IEndpointRouteBuilder pages, RouteGroupBuilder revision)
    {
        revision.MapGet("/timber/labels.pdf", (Guid job, int number, string? stock, HttpRequest request, IJobShelf shelf, StairCache stairs, TimberCache timber, TimeProvider time) =>
            With(job, number, stairs, shelf, timber, time, (state, rod, plan) => LabelStock.Of(stock ?? LabelStock.All[0].Id) is { } labels
                // Their codes lead to the sheets of this very revision, at the address the page was asked at.
                ? Named(state, new PdfFormat().Write(LabelSheets.Make(rod, plan.List, labels, Pack.Draw(rod).Set, $"{request.Scheme}://{request.Host}/jobs/{job}/r/{number}/")).First())
                : Results.Problem($"stock: one of {string.Join(", ", LabelStock.All.Select(l => l.Id))}", statusCode: StatusCodes.Status400BadRequest)));
        revision.MapGet("/timber/{name}", (Guid job, int number, string name, IJobShelf shelf, StairCache stairs, TimberCache timber, TimeProvider time) =>
            With(job, number, stairs, shelf, timber, time, (state, rod, plan) => TimberFiles.Make(rod, plan).FirstOrDefault(f => f.Name == name) is { } file ? Named(state, file) : Results.NotFound()));
        revision.MapGet("/set.pdf", async (Guid job, int number, IJobShelf shelf, StairCache stairs, TimeProvider time) => await stairs.Of(job, number) is { Stair: { } stair } state
            // Opened by a label's code: shown, not kept as a file.
            ? Results.File(new PdfFormat().Write(Pack.Draw(await shelf.Shop.Rod(state, Style(stair, time))).Set).First().Bytes.ToArray(), "application/pdf") : Results.NotFound());
        pages.MapGet("/shop/file", async (IJobShelf shelf) => await shelf.Shop.Newest() is { } card
            ? Results.File(Encoding.UTF8.GetBytes(card.Text), "application/json", FileNames.Of(ShopFile.Read(card.Text).Value?.Name ?? "", ShopFile.Ending)) : Results.NotFound());
    }

    private static async Task<IResult> With(Guid job, int number, StairCache stairs, IJobShelf shelf, TimberCache timber, TimeProvider time, Func<BenchState, RodJob, BoardPlan, IResult> answer)
    {
        if (await stairs.Of(job, number) is not { Stair: { } stair } state) return Results.NotFound();
        var shop = await shelf.Shop.InUse(stair.Job);
        return answer(state, shop.Rod(state, Style(stair, time)), timber.Of(stair, shop.Shop));
    }

    private static RodStyle Style(Stair stair, TimeProvider time) => new(PaperFit.Default(stair.Units), null, JobFiles.Today(time).ToString("O", null));

    private static IResult Named(BenchState state, WrittenFile file) => Results.File(file.Bytes.ToArray(), file.MediaType, FileNames.Of($"{state.Job.Title} {Path.GetFileNameWithoutExtension(file.Name)}", Path.GetExtension(file.Name)));
}
