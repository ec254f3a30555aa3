using Rodwright.Workshop.Shelf;

namespace Rodwright.Store.Rows;

/// <summary>A revision as it is stored. Once written only its name ever changes.</summary>
internal sealed class RevisionRow
{
    public required Guid Job { get; init; }

    public required int Number { get; init; }

    public required RevisionKind Kind { get; init; }

    public required string Words { get; init; }

    public required string Name { get; init; }

    public required string By { get; init; }

    public required DateTimeOffset At { get; init; }

    /// <summary>Drawn by the writer: after an answer was lost on its way, it tells whether the revision that stands is the writer's own.</summary>
    public required Guid Ticket { get; init; }

    /// <summary>The job file, plain: anybody can rescue it with nothing but the database's own shell.</summary>
    public required string Text { get; init; }
}
