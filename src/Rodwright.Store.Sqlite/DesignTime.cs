using Microsoft.EntityFrameworkCore.Design;

namespace Rodwright.Store.Sqlite;

/// <summary>What the tool that writes migrations starts from; the program never uses it.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext(string[] args) => new(SqliteStore.Options("Data Source=design.db"));
}
