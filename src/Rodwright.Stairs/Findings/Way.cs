namespace Rodwright.Stairs.Findings;

/// <summary>One way of freeing something, tried by growing amounts: the first that holds is the remedy.</summary>
/// <param name="Tries">Least change first; null for one that this stair has no room for.</param>
public sealed record Way(IEnumerable<Remedy?> Tries)
{
    /// <summary>By growing amounts.</summary>
    public static Way Of(IEnumerable<Remedy?> tries) => new(tries);

    /// <summary>A single amount, or none where this stair has no room for it.</summary>
    public static Way Of(Remedy? remedy) => new([remedy]);

    /// <summary>A single amount.</summary>
    public static implicit operator Way(Remedy remedy) => new([remedy]);

    /// <summary>The first try that a test passes; null when none does.</summary>
    public Remedy? First(Func<Remedy, bool> holds)
    {
        foreach (var remedy in Tries) if (remedy is not null && holds(remedy)) return remedy;
        return null;
    }
}
