using Rodwright.Store.Postgres;
using Rodwright.Store.Tests.Servers;

namespace Rodwright.Store.Tests;

/// <summary>A store in a database of its own on the tests' server.</summary>
internal sealed class PostgresTestStore : TestStore
{
    private readonly PostgresServer server;

    private PostgresTestStore(PostgresServer server, string connection)
    {
        this.server = server;
        Connection = connection;
        Provider = PostgresStore.At(connection);
    }

    public string Connection { get; }

    public override StoreProvider Provider { get; }

    public static async Task<PostgresTestStore> New() => await New(await PostgresServer.Running());

    public static async Task<PostgresTestStore> New(PostgresServer server) => new(server, await server.NewDatabase());

    protected override Task<JobShelf> OpenShelf(TimeProvider clock) => PostgresShelf.Open(Connection, clock);

    protected override Task Remove() => server.Drop(Connection);
}
