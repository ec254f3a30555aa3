using BenchmarkDotNet.Attributes;
using Rodwright.Store;
using Rodwright.Store.Sqlite;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Benchmarks;

/// <summary>Looking for jobs on a full shelf, in SQLite. Wanted: 100 ms among 10,000.</summary>
[MemoryDiagnoser]
public class ShelfSearch
{
    private const int Jobs = 10000;
    private static readonly string[] Places = ["Barn", "Mill", "Chapel", "Farmhouse", "Cottage", "Schoolhouse", "Bakery", "Forge"];
    private static readonly string[] People = ["Hughes", "O’Brien", "Ångström", "Müller", "Łukasz", "Patel", "Sørensen", "Dupré"];
    private readonly string folder = Directory.CreateTempSubdirectory("rodwright-bench.").FullName;
    private JobShelf shelf = null!;

    /// <summary>What is looked for: nothing in particular, a word on an eighth of the jobs, three words on one, a word on none.</summary>
    [Params("", "angstrom", "mill HUGHES 777", "escalator")]
    public string Words { get; set; } = "";

    /// <summary>Fills a shelf, the same each time.</summary>
    [GlobalSetup]
    public async Task Fill()
    {
        shelf = await SqliteShelf.Open(Path.Combine(folder, "jobs.db"), TimeProvider.System);
        await Parallel.ForEachAsync(Enumerable.Range(0, Jobs), async (n, stop) =>
        {
            var title = $"{Places[n % Places.Length]} stair for {People[n / Places.Length % People.Length]}, order {n}";
            await shelf.Add(new(RevisionKind.Made, "{ }", title, $"{3 + n % 15} risers, {(n % 2 == 0 ? "left" : "right")} hand, {n % 4} tapered steps", "made from a sample", "Anna"), stop);
        });
    }

    /// <summary>The first page of what is found, and how many there are.</summary>
    [Benchmark]
    public Task<ShelfPage> Find() => shelf.Find(new(Words));

    /// <summary>Takes the shelf away.</summary>
    [GlobalCleanup]
    public void Remove()
    {
        shelf.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
