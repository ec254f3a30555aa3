namespace Rodwright.Store.Rows;

/// <summary>A shop's own regulation table as it is stored.</summary>
internal sealed class OwnTableRow
{
    public required string Id { get; init; }

    public required string Title { get; set; }

    /// <summary>One more with every change, and what a writer must have seen to write.</summary>
    public required int Version { get; set; }

    public required string ChangedBy { get; set; }

    public required DateTimeOffset ChangedAt { get; set; }

    /// <summary>The regulation file, plain: anybody can rescue it with nothing but the database's own shell.</summary>
    public required string Text { get; set; }
}
