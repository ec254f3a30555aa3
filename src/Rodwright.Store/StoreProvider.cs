using Microsoft.EntityFrameworkCore;

namespace Rodwright.Store;

/// <summary>All that differs between one kind of store and another.</summary>
/// <param name="Kind">As <see cref="Rodwright.Workshop.Shelf.IJobShelf.Kind"/>.</param>
/// <param name="Options">How it is reached, for work.</param>
/// <param name="Forward">How it is reached while its tables are carried forward.</param>
/// <param name="HasHistory">SQL that counts the tables, none or one, in which it is written down which migrations are done.</param>
/// <param name="Turn">SQL that waits, inside a transaction, until nobody else carries the store forward; empty where a transaction does that itself.</param>
/// <param name="Close">Lets go of connections kept for later.</param>
internal sealed record StoreProvider(
    string Kind, DbContextOptions<StoreContext> Options, DbContextOptions<StoreContext> Forward, string HasHistory, string Turn, Action Close);
