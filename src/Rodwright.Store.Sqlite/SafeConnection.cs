using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Rodwright.Store.Sqlite;

/// <summary>
/// Says on every connection what the promise of the shelf rests on: readers and one writer side by side (WAL); a commit is on the disk before it is
/// acknowledged; who finds the file locked waits. None of it is left to how the library was built.
/// </summary>
internal sealed class SafeConnection : DbConnectionInterceptor
{
    private const string Pragmas = "PRAGMA busy_timeout = 30000; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;";

    private SafeConnection()
    {
    }

    public static SafeConnection Instance { get; } = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Say(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        // SQLite has no waiting that could be handed to somebody else.
        Say(connection);
        return Task.CompletedTask;
    }

    private static void Say(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }
}
