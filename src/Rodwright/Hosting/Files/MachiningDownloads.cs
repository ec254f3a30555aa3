using Rodwright.Rod;
using Rodwright.Rod.Board;
using Rodwright.Rod.Machining;
using Rodwright.Workshop.Sessions;

namespace Rodwright.Hosting.Files;

/// <summary>The files a revision's pieces are machined from.</summary>
internal static class MachiningDownloads
{
    /// <summary>Adds them to the group of a revision.</summary>
    public static void Map(RouteGroupBuilder revision)
    {
        revision.MapGet("/machining.zip", (Guid job, int number, StairCache stairs) => JobFiles.WithStair(stairs, job, number, state =>
            JobFiles.Zip(PartFiles.Make(Rod(state)), FileNames.Of($"{state.Job.Title} machining", ".zip"))));
        revision.MapGet("/machining/{name}", (Guid job, int number, string name, StairCache stairs) => JobFiles.WithStair(stairs, job, number, state =>
            PartFiles.Make(Rod(state)).FirstOrDefault(f => f.Name == name) is { } file
                ? Results.File(file.Bytes.ToArray(), file.MediaType, FileNames.Of($"{state.Job.Title} {Path.GetFileNameWithoutExtension(file.Name)}", Path.GetExtension(file.Name))) : Results.NotFound()));
    }

    private static RodJob Rod(BenchState state) => new(state.Stair!, state.Proof!, new RodStyle(PaperFit.Default(state.Stair!.Units), null, ""));
}
