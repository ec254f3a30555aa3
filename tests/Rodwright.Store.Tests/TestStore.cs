using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>A store for one test, empty and not even made at first; gone afterwards.</summary>
internal abstract class TestStore : IAsyncDisposable
{
    private readonly List<JobShelf> opened = [];

    public static TheoryData<StoreKind> Kinds => [StoreKind.Sqlite, StoreKind.Postgres];

    /// <summary>How the shelf under test reaches it.</summary>
    public abstract StoreProvider Provider { get; }

    public static async Task<TestStore> New(StoreKind kind) => kind == StoreKind.Sqlite ? new SqliteTestStore() : await PostgresTestStore.New();

    /// <summary>Opens it as the program does, with its own connections.</summary>
    public async Task<JobShelf> Open(TimeProvider? clock = null)
    {
        var shelf = await OpenShelf(clock ?? TimeProvider.System);
        lock (opened) opened.Add(shelf);
        return shelf;
    }

    /// <summary>Looks at the tables behind the shelf's back.</summary>
    public StoreContext Look() => new(Provider.Options);

    /// <summary>Says something to the database behind the shelf's back.</summary>
    public async Task<int> Say(string sql, params (string Name, object Value)[] values)
    {
        await using var context = Look();
        await context.Database.OpenConnectionAsync();
        await using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in values)
        {
            var parameter = command.CreateParameter();
            (parameter.ParameterName, parameter.Value) = (name, value);
            command.Parameters.Add(parameter);
        }
        return await command.ExecuteNonQueryAsync();
    }

    /// <summary>Asks the database for one value.</summary>
    public async Task<object?> Ask(string sql)
    {
        await using var context = Look();
        await context.Database.OpenConnectionAsync();
        await using DbCommand command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteScalarAsync();
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var shelf in opened) shelf.Dispose();
        Provider.Close();
        await Remove();
    }

    protected abstract Task<JobShelf> OpenShelf(TimeProvider clock);

    protected abstract Task Remove();
}
