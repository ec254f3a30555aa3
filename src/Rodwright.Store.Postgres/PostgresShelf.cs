using Npgsql;

namespace Rodwright.Store.Postgres;

/// <summary>The shelf in a PostgreSQL database, for several machines.</summary>
public static class PostgresShelf
{
    /// <summary>Opens the store in a database that exists; its tables are made if they are not there, and carried forward if an earlier version made them.</summary>
    /// <param name="connectionString">As Npgsql reads it: <c>Host=...;Database=...;Username=...</c>.</param>
    /// <param name="clock">What time it is.</param>
    /// <param name="stop">Gives up; the store is then as it was or as it should be.</param>
    /// <exception cref="ArgumentException">The connection string cannot be read.</exception>
    /// <exception cref="InvalidOperationException">The database does not keep its text as UTF-8, or the store was made by a later version of this program.</exception>
    /// <exception cref="NpgsqlException">The database cannot be reached.</exception>
    public static async Task<JobShelf> Open(string connectionString, TimeProvider clock, CancellationToken stop = default)
    {
        await PostgresStore.DemandUnicode(connectionString, stop);
        return await JobShelf.Open(PostgresStore.At(connectionString), clock, stop);
    }
}
