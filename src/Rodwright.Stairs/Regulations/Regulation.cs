using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Regulations.Own;

namespace Rodwright.Stairs.Regulations;

/// <summary>
/// One published rule set in one edition: a table, never logic. Editions are never edited: a new edition is a new table with a new id.
/// Lengths are full size; a teaching model's scale is applied where they are judged.
/// </summary>
public sealed record Regulation
{
    /// <summary>Stable id, for example england-2013-private.</summary>
    public required string Id { get; init; }

    /// <summary>Title with edition, as printed.</summary>
    public required string Title { get; init; }

    /// <summary>Whose rules they are, in as few words as a list is grouped by: "England", "DIN 18065".</summary>
    public string Group { get; init; } = "";

    /// <summary>Where goings are measured across the width.</summary>
    public required WalkingLineRule WalkingLine { get; init; }

    /// <summary>Whether the going of a tapered step is a chord or an arc.</summary>
    public required GoingMeasure Going { get; init; }

    /// <summary>Which narrow end is limited.</summary>
    public required NarrowMeasure Narrow { get; init; }

    /// <summary>Least narrow end, mm; 0 where the table sets none.</summary>
    public required double LeastNarrow { get; init; }

    /// <summary>Whether a tapered step's going must be no less than a straight step's.</summary>
    public required bool TaperedAtLeastStraight { get; init; }

    /// <summary>Least going of any step, mm; 0 where the table sets none.</summary>
    public required double LeastGoing { get; init; }

    /// <summary>The unit its document is written in, in which the table is read.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    /// <summary>Which going, chord or arc, and which narrow end the table limits, in words.</summary>
    public string Measures { get; init; } = "";

    /// <summary>Id of the published table a shop's own one is made after; empty for none.</summary>
    public string BasedOn { get; init; } = "";

    /// <summary>What a shop's own table was made from; null for a published one.</summary>
    public OwnRegulation? WrittenAs { get; init; }

    /// <summary>Whether it is a shop's own table.</summary>
    public bool IsOwn => RegulationShelf.IsOwn(Id);

    /// <summary>How binding the document is, in words.</summary>
    public string Standing { get; init; } = "";

    /// <summary>Every clause, those this version cannot measure included.</summary>
    public ImmutableArray<Clause> Clauses { get; init; } = [];
}
