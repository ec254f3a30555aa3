using Microsoft.EntityFrameworkCore.Design;

namespace Rodwright.Store.Postgres;

/// <summary>What the tool that writes migrations starts from; the program never uses it, and nothing listens there.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext(string[] args) => new(PostgresStore.Options("Host=design"));
}
