using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Rodwright.Store.Sqlite.Compiled;

namespace Rodwright.Store.Sqlite;

/// <summary>How a store in a file is reached.</summary>
internal static class SqliteStore
{
    private const string HasHistory = "SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsHistory';";

    /// <summary>The store at a full path.</summary>
    public static StoreProvider At(string path)
    {
        // While tables are carried forward some are made anew and swapped: SQLite wants its foreign keys off for that.
        var (work, forward) = (Reach(path, foreignKeys: true), Reach(path, foreignKeys: false));
        return new("SQLite", Options(work), Options(forward), HasHistory, Turn: "", () => Close(work, forward));
    }

    /// <summary>Options over a connection string.</summary>
    public static DbContextOptions<StoreContext> Options(string connection) =>
        new DbContextOptionsBuilder<StoreContext>()
            .UseSqlite(connection, o => o.MigrationsAssembly(typeof(SqliteStore).Assembly.GetName().Name))
            .UseQueryTrackingBehavior(QueryTrackingBehavior.NoTracking)
            .AddInterceptors(SafeConnection.Instance)
            // Worked out beforehand: building the model costs a start half a second, and this store is the one that is started on a laptop.
            .UseModel(StoreContextModel.Instance)
            .Options;

    private static string Reach(string path, bool foreignKeys) =>
        new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadWriteCreate, ForeignKeys = foreignKeys, Pooling = true }.ToString();

    // The last connection to go writes everything into the one file and takes the two beside it away.
    private static void Close(params ReadOnlySpan<string> connections)
    {
        foreach (var text in connections)
        {
            using var connection = new SqliteConnection(text);
            SqliteConnection.ClearPool(connection);
        }
    }
}
