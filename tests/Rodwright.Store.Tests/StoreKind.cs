namespace Rodwright.Store.Tests;

/// <summary>The kinds of store every promise of the shelf is tested on.</summary>
public enum StoreKind
{
    Sqlite,
    Postgres,
}
