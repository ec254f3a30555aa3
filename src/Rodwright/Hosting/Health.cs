using System.Reflection;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Hosting;

/// <summary>/health: whether the program answers and its store does, for whoever watches it.</summary>
internal static class Health
{
    private static readonly string Version = typeof(Health).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    public static void Map(IEndpointRouteBuilder pages) => pages.MapGet("/health", async (IJobShelf shelf, CancellationToken stop) =>
    {
        try
        {
            var jobs = await shelf.Find(new(Take: 1), stop);
            return Results.Json(new HealthReport(Version, shelf.Kind, "reached", jobs.Total));
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return Results.Json(new HealthReport(Version, shelf.Kind, "not reached", null), statusCode: StatusCodes.Status503ServiceUnavailable);
        }
    });
}
