using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Rodwright.Store.Sqlite;

/// <summary>The shelf in one file, for one machine.</summary>
public static class SqliteShelf
{
    /// <summary>
    /// Opens the store, made if it is not there, its folder too; one made by an earlier version is carried forward. While it is open two more files stand beside
    /// it (<c>-wal</c>, <c>-shm</c>): they belong to it, and a copy made meanwhile needs them.
    /// </summary>
    /// <param name="file">A path, always taken as one: <c>:memory:</c> is a file of that name. Not on a network drive, where SQLite's locks do not hold.</param>
    /// <param name="clock">What time it is.</param>
    /// <param name="stop">Gives up; the store is then as it was or as it should be.</param>
    /// <exception cref="InvalidOperationException">The store was made by a later version of this program.</exception>
    /// <exception cref="SqliteException">The file cannot be opened, or is something else.</exception>
    public static Task<JobShelf> Open(string file, TimeProvider clock, CancellationToken stop = default)
    {
        var path = Path.GetFullPath(file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        return JobShelf.Open(SqliteStore.At(path), clock, stop);
    }
}
