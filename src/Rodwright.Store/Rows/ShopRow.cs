namespace Rodwright.Store.Rows;

/// <summary>A version of the shop as it is stored; never changed once written.</summary>
internal sealed class ShopRow
{
    /// <summary>From 1, and what a writer must have seen the one before of to write.</summary>
    public required int Version { get; init; }

    public required string ChangedBy { get; init; }

    public required DateTimeOffset ChangedAt { get; init; }

    /// <summary>Whose write it was: told from another's of the same version when an answer was lost on its way.</summary>
    public required Guid Ticket { get; init; }

    /// <summary>The shop file, plain: anybody can rescue it with nothing but the database's own shell.</summary>
    public required string Text { get; init; }
}
