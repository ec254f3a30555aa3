namespace Rodwright.Store.Rows;

/// <summary>A job as it is stored: what its card says. All but <see cref="Archived"/> follows its newest revision.</summary>
internal sealed class JobRow
{
    public required Guid Id { get; init; }

    public required string Title { get; set; }

    public required string Summary { get; set; }

    /// <summary>Number of the newest revision, and what a writer must have seen to write.</summary>
    public required int Revision { get; set; }

    public required string ChangedBy { get; set; }

    public required DateTimeOffset ChangedAt { get; set; }

    public bool Archived { get; set; }

    /// <summary>What searching looks through (<see cref="Rodwright.Store.Search.SearchText"/>); null until it has been worked out.</summary>
    public string? Search { get; set; }
}
