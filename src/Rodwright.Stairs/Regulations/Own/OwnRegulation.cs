using System.Collections.Immutable;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations.Own;

/// <summary>A shop's own table as its file says it: by itself, or what it changes of a published one. Immutable.</summary>
public sealed record OwnRegulation
{
    /// <summary>Stable id, own-….</summary>
    public required string Id { get; init; }

    /// <summary>Title as printed.</summary>
    public required string Title { get; init; }

    /// <summary>Id of the published table whose clauses it takes over; empty for none.</summary>
    public string BasedOn { get; init; } = "";

    /// <summary>How binding it is, in the shop's words; empty for the usual.</summary>
    public string Standing { get; init; } = "";

    /// <summary>Where and how goings and narrow ends are measured; what is left out is as in the table it is based on.</summary>
    public OwnMeasures Measures { get; init; } = new();

    /// <summary>Its clauses: all of them, or those it adds to, and changes of, the table it is based on.</summary>
    public ImmutableArray<OwnClause> Clauses { get; init; } = [];

    /// <summary>The table a stair is judged by.</summary>
    public Regulation Table() => OwnTable.Of(this);

    /// <summary>Equal when all of it is: an array alone would be compared by identity.</summary>
    public bool Equals(OwnRegulation? other) => other is not null && Id == other.Id && Title == other.Title && BasedOn == other.BasedOn && Standing == other.Standing
        && Measures == other.Measures && Clauses.SequenceEqual(other.Clauses);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Title, BasedOn, Clauses.Length);
}

/// <summary>Where and how an own table measures. Null, or empty, where it does as the table it is based on.</summary>
public sealed record OwnMeasures
{
    /// <summary>Clear widths below this are measured in the middle, mm; 0 for never.</summary>
    public double? MiddleBelow { get; init; }

    /// <summary>Otherwise this far from the inner side, mm.</summary>
    public double? Inset { get; init; }

    /// <summary>Whether the same inset from the outer side is measured too.</summary>
    public bool? BothSides { get; init; }

    /// <summary>Going of a tapered step: chord or arc.</summary>
    public string Going { get; init; } = "";

    /// <summary>Narrow end: along-faces, straight or tread-width.</summary>
    public string Narrow { get; init; } = "";

    /// <summary>Whether a tapered step's going must be no less than a straight step's.</summary>
    public bool? TaperedAtLeastStraight { get; init; }
}

/// <summary>One clause of an own table.</summary>
public sealed record OwnClause
{
    /// <summary>Id of the rule that measures it.</summary>
    public string Rule { get; init; } = "";

    /// <summary>Its number or name in the shop's book.</summary>
    public string Clause { get; init; } = "";

    /// <summary>Number of the clause of the table it is based on whose place it takes, for the same rule; empty to stand beside them.</summary>
    public string Replaces { get; init; } = "";

    /// <summary>Least allowed, in the rule's unit.</summary>
    public double? Least { get; init; }

    /// <summary>Most allowed.</summary>
    public double? Most { get; init; }

    /// <summary>straight-going or clear-width, where the least is measured against the stair itself; else empty.</summary>
    public string AtLeast { get; init; } = "";

    /// <summary>At most so many straight goings.</summary>
    public double? StraightGoings { get; init; }

    /// <summary>Boxes of rise and going, any one of which holds; empty for none.</summary>
    public ImmutableArray<OwnPair> Pairs { get; init; } = [];

    /// <summary>own, text-seen, secondary or memory.</summary>
    public string Evidence { get; init; } = "own";

    /// <summary>Where the number comes from, in the shop's words.</summary>
    public string Source { get; init; } = "";

    /// <summary>limit or advice.</summary>
    public string Weight { get; init; } = "limit";

    /// <summary>The rule that measures it; null when there is none of that id.</summary>
    public Rule? Measured => RuleCatalogue.Find(Rule);

    /// <summary>Equal when all of it is: an array alone would be compared by identity.</summary>
    public bool Equals(OwnClause? other) => other is not null && Rule == other.Rule && Clause == other.Clause && Replaces == other.Replaces && Least == other.Least && Most == other.Most
        && AtLeast == other.AtLeast && StraightGoings == other.StraightGoings && Pairs.SequenceEqual(other.Pairs) && Evidence == other.Evidence && Source == other.Source && Weight == other.Weight;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Rule, Clause, Least, Most, Source);
}

/// <summary>A box of rises and goings as a file says it, mm.</summary>
/// <param name="RiseLeast">Least rise.</param>
/// <param name="RiseMost">Greatest rise.</param>
/// <param name="GoingLeast">Least going with it.</param>
/// <param name="GoingMost">Greatest going with it.</param>
public sealed record OwnPair(double RiseLeast, double RiseMost, double GoingLeast, double GoingMost);
