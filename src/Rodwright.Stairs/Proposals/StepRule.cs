namespace Rodwright.Stairs.Proposals;

/// <summary>A comfort rule of the books that gives the going for a rise and the rise for a going (standards.md 10). Advice, never a limit; any one unit of length.</summary>
public sealed record StepRule
{
    private StepRule(double amount, bool isProduct) => (Amount, IsProduct) = (amount, isProduct);

    /// <summary>The pace, or the product.</summary>
    public double Amount { get; }

    /// <summary>Whether rise times going is kept, rather than twice the rise and the going together.</summary>
    public bool IsProduct { get; }

    /// <summary>Twice the rise and the going make one pace.</summary>
    public static StepRule Pace(double pace) => new(pace, false);

    /// <summary>Rise times going make one product.</summary>
    public static StepRule Product(double product) => new(product, true);

    /// <summary>The going that goes with a rise.</summary>
    public double GoingFor(double rise) => IsProduct ? Amount / rise : Amount - 2 * rise;

    /// <summary>The rise that goes with a going.</summary>
    public double RiseFor(double going) => IsProduct ? Amount / going : (Amount - going) / 2;
}
