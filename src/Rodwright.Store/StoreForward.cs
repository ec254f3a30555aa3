using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.EntityFrameworkCore.Storage;
using Rodwright.Store.Search;

namespace Rodwright.Store;

/// <summary>
/// Carries a store forward to the tables this program knows. All missing migrations go in one transaction, and everybody waits their turn: a program killed half way,
/// or two started at once, leave the store as it was or as it should be. The framework's own way leaves a lock row behind when it is killed, and then waits
/// for it for ever. Whether anything is missing is asked in plain SQL: starting the framework's machinery for it would cost every start a third of a second.
/// </summary>
internal static class StoreForward
{
    private const string Done = """SELECT "MigrationId" FROM "__EFMigrationsHistory" ORDER BY "MigrationId";""";
    private const string Unsearchable = "SELECT EXISTS (SELECT 1 FROM jobs WHERE search IS NULL);";
    private const int FilledAtOnce = 500;

    /// <exception cref="InvalidOperationException">The store was made by a later program.</exception>
    public static async Task Carry(StoreProvider provider, CancellationToken stop)
    {
        await using var context = new StoreContext(provider.Forward);
        await context.Database.CreateExecutionStrategy().ExecuteAsync(async token =>
        {
            await context.Database.OpenConnectionAsync(token);
            try
            {
                if (await Missing(context, provider, token) is not null) await Migrate(context, provider, token);
                while (await Ask(context, Unsearchable, token)) await FillSearch(context, token);
            }
            finally
            {
                await context.Database.CloseConnectionAsync();
            }
        }, stop);
    }

    private static async Task Migrate(StoreContext context, StoreProvider provider, CancellationToken stop)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(stop);
        if (provider.Turn.Length > 0) await Execute(context, provider.Turn, stop);
        // Asked again: somebody may have done it while this program waited.
        if (await Missing(context, provider, stop) is not { } from) return;
        await Execute(context, context.GetService<IMigrator>().GenerateScript(from, null, MigrationsSqlGenerationOptions.NoTransactions), stop);
        await transaction.CommitAsync(stop);
    }

    /// <summary>The migration to start after, "0" for an empty store; null when none is missing.</summary>
    private static async Task<string?> Missing(StoreContext context, StoreProvider provider, CancellationToken stop)
    {
        var known = context.Database.GetMigrations().ToList();
        var done = new List<string>();
        if (await Ask(context, provider.HasHistory, stop))
        {
            await using var command = Command(context, Done);
            await using var rows = await command.ExecuteReaderAsync(stop);
            while (await rows.ReadAsync(stop)) done.Add(rows.GetString(0));
        }
        if (done.Except(known).ToList() is { Count: > 0 } later)
            throw new InvalidOperationException(
                $"The store was made by a later Rodwright than this one ({string.Join(", ", later)}). Open it with that one: this one would not keep all that is in it.");
        return done.Count == known.Count ? null : done.LastOrDefault() ?? Migration.InitialDatabase;
    }

    /// <summary>Works out what searching looks through for some jobs that lack it: a migration cannot, since letters are folded here and not in SQL.</summary>
    private static async Task FillSearch(StoreContext context, CancellationToken stop)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(stop);
        var jobs = await context.Jobs.Where(j => j.Search == null).Take(FilledAtOnce).Select(j => new { j.Id, j.Revision, j.Title, j.Summary }).ToListAsync(stop);
        foreach (var job in jobs)
        {
            var search = SearchText.Of(job.Title, job.Summary);
            // A job changed meanwhile has been filled by who changed it.
            await context.Jobs.Where(j => j.Id == job.Id && j.Revision == job.Revision && j.Search == null)
                .ExecuteUpdateAsync(set => set.SetProperty(j => j.Search, search), stop);
        }
        await transaction.CommitAsync(stop);
    }

    private static async Task<bool> Ask(StoreContext context, string sql, CancellationToken stop)
    {
        await using var command = Command(context, sql);
        return Convert.ToBoolean(await command.ExecuteScalarAsync(stop), CultureInfo.InvariantCulture);
    }

    // Not as raw SQL of the framework: that would read braces as places for parameters.
    private static async Task Execute(StoreContext context, string sql, CancellationToken stop)
    {
        await using var command = Command(context, sql);
        await command.ExecuteNonQueryAsync(stop);
    }

    private static DbCommand Command(StoreContext context, string sql)
    {
        var command = context.Database.GetDbConnection().CreateCommand();
        command.Transaction = context.Database.CurrentTransaction?.GetDbTransaction();
        command.CommandText = sql;
        return command;
    }
}
