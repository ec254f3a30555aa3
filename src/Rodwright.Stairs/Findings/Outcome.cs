using System.Collections.Immutable;

namespace Rodwright.Stairs.Findings;

/// <summary>A value with what was found on the way, or no value and the errors that prevented it.</summary>
/// <typeparam name="T">What was wanted.</typeparam>
public sealed class Outcome<T> where T : class
{
    private Outcome(T? value, IEnumerable<Finding> findings)
    {
        Value = value;
        Findings = [.. findings];
    }

    /// <summary>The value; null exactly when at least one finding is an error.</summary>
    public T? Value { get; }

    /// <summary>Everything found, in the order found.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>A value, with findings that are not errors.</summary>
    /// <exception cref="ArgumentException">One of the findings is an error.</exception>
    public static Outcome<T> Of(T value, IEnumerable<Finding> findings)
    {
        var outcome = new Outcome<T>(value, findings);
        return outcome.Findings.Any(f => f.Severity == Severity.Error)
            ? throw new ArgumentException("a value does not come with errors", nameof(findings))
            : outcome;
    }

    /// <summary>No value: the errors say why.</summary>
    /// <exception cref="ArgumentException">None of the findings is an error.</exception>
    public static Outcome<T> Refused(IEnumerable<Finding> findings)
    {
        var outcome = new Outcome<T>(null, findings);
        return outcome.Findings.Any(f => f.Severity == Severity.Error)
            ? outcome
            : throw new ArgumentException("a refusal says why", nameof(findings));
    }
}
