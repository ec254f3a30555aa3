using System.Collections.Immutable;

namespace Rodwright.Stairs.Findings;

/// <summary>
/// One thing found: what pinches, where, by how much, and what would free it. Codes are stable: RW1xxx job file, RW2xxx plan,
/// RW3xxx regulation, RW4xxx joinery, RW5xxx sheets, RW6xxx files.
/// </summary>
/// <param name="Code">Stable code, for example RW1004.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Where">The field of the job file ("practice.newel") or the piece of the stair ("string O1").</param>
/// <param name="Message">What was read or measured and what is allowed, with units, in bench words.</param>
/// <param name="Hint">What would help, in bench words.</param>
public sealed record Finding(string Code, Severity Severity, string Where, string Message, string Hint)
{
    /// <summary>What would free it at one press. Worked out on request: empty until then, and where only words can help.</summary>
    public ImmutableArray<Remedy> Remedies { get; init; } = [];

    /// <summary>Equal when all of it is: an array alone would be compared by identity.</summary>
    public bool Equals(Finding? other) => other is not null && Code == other.Code && Severity == other.Severity && Where == other.Where
        && Message == other.Message && Hint == other.Hint && Remedies.SequenceEqual(other.Remedies);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Code, Where, Message);
}
