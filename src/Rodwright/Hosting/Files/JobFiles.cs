using System.IO.Compression;
using System.Text;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Output;
using Rodwright.Rod;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Scenes;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Workshop.Pictures;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Shops;

namespace Rodwright.Hosting.Files;

/// <summary>Files of a revision: pictures, sheets, model, pack. A revision never changes, so what the browser has once fetched it need not fetch again.</summary>
internal static class JobFiles
{
    public static void Map(IEndpointRouteBuilder pages)
    {
        var revision = pages.MapGroup("/jobs/{job:guid}/r/{number:int}");
        revision.MapGet("/job.stair.json", (Guid job, int number, StairCache stairs) => With(stairs, job, number, state =>
            Results.File(Encoding.UTF8.GetBytes(JobFile.Write(state.Job)), "application/json", FileNames.Of(state.Job.Title, ".stair.json"))));
        revision.MapGet("/card.svg", (Guid job, int number, StairCache stairs, HttpContext context) => With(stairs, job, number, state =>
        {
            Keep(context, state);
            return Results.Text(state.Stair is { } stair ? CardPicture.Of(stair) : CardPicture.None, "image/svg+xml");
        }));
        revision.MapGet("/stair.glb", (Guid job, int number, StairCache stairs) => WithStair(stairs, job, number, state =>
            Model(state, StairModel.Glb(state.Stair!))));
        revision.MapGet("/stair.step", (Guid job, int number, StairCache stairs, TimeProvider time) => WithStair(stairs, job, number, state => Model(state, StairModel.Step(state.Stair!, Today(time)))));
        revision.MapGet("/stair.ifc", (Guid job, int number, StairCache stairs, TimeProvider time) => WithStair(stairs, job, number, state => Model(state, StairModel.Ifc(state.Stair!, Today(time)))));
        revision.MapGet("/scene.glb", (Guid job, int number, StairCache stairs, HttpContext context) => WithStair(stairs, job, number, state =>
        {
            Keep(context, state);
            return Results.File(StairScene.Write(state.Stair!).Bytes.ToArray(), "model/gltf-binary");
        }));
        revision.MapGet("/sheets/{name}.svg", (Guid job, int number, string name, [AsParameters] PrintWishes wishes, StairCache stairs, SheetCache sheets, IJobShelf shelf, TimeProvider time) =>
            WithSheet(stairs, sheets, shelf, job, number, name, wishes, time, (_, sheet) => Results.Text(SvgWriter.Write(sheet), "image/svg+xml")));
        revision.MapGet("/sheets/{name}.pdf", (Guid job, int number, string name, [AsParameters] PrintWishes wishes, StairCache stairs, SheetCache sheets, IJobShelf shelf, TimeProvider time) =>
            WithSheet(stairs, sheets, shelf, job, number, name, wishes, time, (state, sheet) => Results.File(
                new PdfFormat().Write(new SheetSet(sheet.Name, state.Job.Title, [sheet])).First().Bytes.ToArray(), "application/pdf", FileNames.Of($"{state.Job.Title} {sheet.Name}", ".pdf"))));
        revision.MapGet("/print/{name}", (Guid job, int number, string name, [AsParameters] PrintWishes wishes, StairCache stairs, SheetCache sheets, IJobShelf shelf, TimeProvider time) =>
            WithSheet(stairs, sheets, shelf, job, number, name, wishes, time, (state, sheet) => Results.Text(PrintPage.Of(state.Job.Title, sheet), "text/html", Encoding.UTF8)));
        revision.MapGet("/pack.zip", (Guid job, int number, [AsParameters] PrintWishes wishes, StairCache stairs, IJobShelf shelf, TimeProvider time) =>
            WithRod(stairs, shelf, job, number, wishes, time, (state, rod) => Zip(state, rod, wishes.Booklet == 1, Today(time))));
        TimberDownloads.Map(pages, revision);
        MachiningDownloads.Map(revision);
        pages.MapGet("/regulations/{id}/file", async (string id, IJobShelf shelf) => await shelf.Tables.Find(id) is { } table
            ? Results.File(Encoding.UTF8.GetBytes(table.Text), "application/json", table.Id + OwnRegulationFile.Ending) : Results.NotFound());
        pages.MapGet("/print.css", PrintPage.Style);
    }

    /// <summary>Today, by this machine's clock.</summary>
    internal static DateOnly Today(TimeProvider time) => DateOnly.FromDateTime(time.GetLocalNow().DateTime);

    private static IResult Model(BenchState state, WrittenFile model) => Results.File(model.Bytes.ToArray(), model.MediaType, FileNames.Of(state.Job.Title, Path.GetExtension(model.Name)));

    private static async Task<IResult> With(StairCache stairs, Guid job, int number, Func<BenchState, IResult> answer) =>
        await stairs.Of(job, number) is { } state ? answer(state) : Results.NotFound();

    /// <summary>An answer made from a revision's stair; not found where there is none.</summary>
    internal static async Task<IResult> WithStair(StairCache stairs, Guid job, int number, Func<BenchState, IResult> answer) =>
        await stairs.Of(job, number) is { Stair: not null } state ? answer(state) : Results.NotFound();

    private static async Task<IResult> WithRod(
        StairCache stairs, IJobShelf shelf, Guid job, int number, PrintWishes wishes, TimeProvider time, Func<BenchState, RodJob, IResult> answer)
    {
        if (await stairs.Of(job, number) is not { Stair: { } stair } state) return Results.NotFound();
        return wishes.Read(stair.Units, time, out var refusal) is { } style ? answer(state, await shelf.Shop.Rod(state, style)) : refusal!;
    }

    private static Task<IResult> WithSheet(
        StairCache stairs, SheetCache sheets, IJobShelf shelf, Guid job, int number, string name, PrintWishes wishes, TimeProvider time, Func<BenchState, Sheet, IResult> answer) =>
        WithRod(stairs, shelf, job, number, wishes, time, (state, rod) =>
            sheets.Of(rod).FirstOrDefault(s => s.Name == name) is { } sheet ? answer(state, sheet) : Results.NotFound());

    /// <summary>By a shop's own table the same revision may look otherwise tomorrow.</summary>
    private static void Keep(HttpContext context, BenchState state)
    {
        if (!RegulationShelf.IsOwn(state.Job.Regulation)) context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
    }

    private static IResult Zip(BenchState state, RodJob rod, bool booklet, DateOnly today)
    {
        var pack = Pack.Draw(rod, null, booklet);
        var files = pack.Write(
        [
            new("job.stair.json", "application/json", Encoding.UTF8.GetBytes(JobFile.Write(state.Job))),
            new("result.json", "application/json", Encoding.UTF8.GetBytes(StairJson.Write(state.Stair!, rod.Proof))),
            .. StairModel.All(state.Stair!, today),
            .. OwnTableFile.Of(state.Stair!),
        ]);
        return Zip(files, FileNames.Of(state.Job.Title, ".zip"));
    }

    /// <summary>Some files in one.</summary>
    internal static IResult Zip(IEnumerable<WrittenFile> files, string name)
    {
        using var memory = new MemoryStream();
        using (var zip = new ZipArchive(memory, ZipArchiveMode.Create, leaveOpen: true)) foreach (var file in files) Add(zip, file);
        return Results.File(memory.ToArray(), "application/zip", name);
    }

    private static void Add(ZipArchive zip, WrittenFile file)
    {
        using var stream = zip.CreateEntry(file.Name, CompressionLevel.Fastest).Open();
        stream.Write(file.Bytes.Span);
    }
}
