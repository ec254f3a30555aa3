using Rodwright.Stairs.Jobs;
using Rodwright.Store.Sqlite;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Starts;

namespace Rodwright.PagesBench;

/// <summary>The jobs that are measured on: the sample with 13 steps, three of them tapered, once for each person.</summary>
public static class BenchJobs
{
    /// <summary>The job of each.</summary>
    public static Job Kite => SampleJobs.All.Single(j => j.Title.StartsWith("Larkmoor", StringComparison.Ordinal));

    /// <summary>Puts jobs on the shelf of a data folder before the program opens it; their ids.</summary>
    public static async Task<IReadOnlyList<Guid>> Make(string data, int count)
    {
        using var shelf = await SqliteShelf.Open(Path.Combine(data, "jobs.db"), TimeProvider.System);
        var ids = new List<Guid>();
        for (var i = 1; i <= count; i++)
        {
            var card = await shelf.Add(ShelfDrafts.Made(Kite with { Title = $"{Kite.Title}, {i}" }, "made to be measured", "the bench"));
            ids.Add(card.Id);
        }
        return ids;
    }
}
