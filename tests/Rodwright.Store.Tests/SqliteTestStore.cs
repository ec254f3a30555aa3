using Rodwright.Store.Sqlite;

namespace Rodwright.Store.Tests;

/// <summary>A store in a file, in a folder that is not there until it is opened.</summary>
internal sealed class SqliteTestStore : TestStore
{
    private readonly string root = Directory.CreateTempSubdirectory("rodwright-store.").FullName;

    public SqliteTestStore() => Provider = SqliteStore.At(File);

    // A name with everything in it that means something in a connection string.
    public string File => Path.Combine(root, "the joiner's; \"jobs\" = é", "jobs.db");

    public override StoreProvider Provider { get; }

    protected override Task<JobShelf> OpenShelf(TimeProvider clock) => SqliteShelf.Open(File, clock);

    protected override Task Remove()
    {
        Directory.Delete(root, recursive: true);
        return Task.CompletedTask;
    }
}
