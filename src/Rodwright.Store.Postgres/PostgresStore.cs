using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Rodwright.Store.Postgres;

/// <summary>How a store in a database is reached.</summary>
internal static class PostgresStore
{
    private const string HasHistory = """SELECT count(*) FROM pg_class WHERE oid = to_regclass('"__EFMigrationsHistory"');""";

    /// <summary>The number everybody who carries a store forward takes turns by; any would do, as long as it stays.</summary>
    private const string Turn = "SELECT pg_advisory_xact_lock(7410210118121);";

    private const int Tries = 8;

    /// <summary>The store behind a connection string.</summary>
    public static StoreProvider At(string connectionString)
    {
        var options = Options(connectionString);
        return new("PostgreSQL", options, options, HasHistory, Turn, () => Close(options));
    }

    /// <summary>Options over a connection string. What failed only because the server was away for a moment, as it is while it starts again, is tried again for some seconds.</summary>
    public static DbContextOptions<StoreContext> Options(string connectionString) =>
        new DbContextOptionsBuilder<StoreContext>()
            .UseNpgsql(connectionString, o => o.MigrationsAssembly(typeof(PostgresStore).Assembly.GetName().Name).EnableRetryOnFailure(Tries, TimeSpan.FromSeconds(1), null))
            .UseQueryTrackingBehavior(QueryTrackingBehavior.NoTracking)
            .Options;

    /// <summary>Refuses a database that would lose or mistake letters.</summary>
    /// <exception cref="InvalidOperationException">It keeps another encoding than UTF-8.</exception>
    public static async Task DemandUnicode(string connectionString, CancellationToken stop)
    {
        await using var connection = new NpgsqlConnection(connectionString);
        await connection.OpenAsync(stop);
        await using var command = new NpgsqlCommand("SHOW server_encoding", connection);
        var encoding = (string)(await command.ExecuteScalarAsync(stop))!;
        if (encoding != "UTF8")
            throw new InvalidOperationException($"The database keeps its text as {encoding}, which does not hold every letter. Make one with ENCODING 'UTF8'.");
    }

    private static void Close(DbContextOptions<StoreContext> options)
    {
        using var context = new StoreContext(options);
        NpgsqlConnection.ClearPool((NpgsqlConnection)context.Database.GetDbConnection());
    }
}
