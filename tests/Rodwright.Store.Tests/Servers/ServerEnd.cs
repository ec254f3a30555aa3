using Rodwright.Store.Tests.Servers;
using Xunit;

[assembly: AssemblyFixture(typeof(ServerEnd))]

namespace Rodwright.Store.Tests.Servers;

/// <summary>Ends the server when all tests are done.</summary>
public sealed class ServerEnd : IAsyncDisposable
{
    public async ValueTask DisposeAsync() => await PostgresServer.StopRunning();
}
