using Rodwright.Drawings.Formats;
using Rodwright.Rod;
using Rodwright.Rod.Board;
using Rodwright.Rod.Machining;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Shops;

namespace Rodwright.Hosting.Files;

/// <summary>The files a revision's pieces are machined from.</summary>
internal static class MachiningDownloads
{
    /// <summary>Adds them to the group of a revision.</summary>
    public static void Map(RouteGroupBuilder revision)
    {
        revision.MapGet("/machining.zip", async (Guid job, int number, StairCache stairs, IJobShelf shelf) => await stairs.Of(job, number) is { Stair: not null } state
            ? JobFiles.Zip(await Files(state, shelf), FileNames.Of($"{state.Job.Title} machining", ".zip")) : Results.NotFound());
        revision.MapGet("/machining/{name}", async (Guid job, int number, string name, StairCache stairs, IJobShelf shelf) => await stairs.Of(job, number) is { Stair: not null } state
            && (await Files(state, shelf)).FirstOrDefault(f => f.Name == name) is { } file
                ? Results.File(file.Bytes.ToArray(), file.MediaType, FileNames.Of($"{state.Job.Title} {Path.GetFileNameWithoutExtension(file.Name)}", Path.GetExtension(file.Name))) : Results.NotFound());
    }

    /// <summary>Cut by the routers of the shop.</summary>
    private static async Task<IReadOnlyList<WrittenFile>> Files(BenchState state, IJobShelf shelf)
    {
        var rod = await shelf.Shop.Rod(state, new RodStyle(PaperFit.Default(state.Stair!.Units), null, ""));
        return PartFiles.All(rod, MachiningList.Left(rod));
    }
}
