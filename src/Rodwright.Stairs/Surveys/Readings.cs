namespace Rodwright.Stairs.Surveys;

/// <summary>Several readings of one thing, as the tape gave them; none when it was not measured.</summary>
/// <param name="Values">In the order taken.</param>
public sealed record Readings(ListOf<double> Values)
{
    /// <summary>Not measured.</summary>
    public static Readings None { get; } = new([]);

    /// <summary>One reading.</summary>
    public static Readings Of(params ReadOnlySpan<double> values) => new(ListOf.Create(values));

    /// <summary>Whether there is any reading.</summary>
    public bool IsGiven => Values.Count > 0;

    /// <summary>What is worked to: their mean; 0 when there is none.</summary>
    public double Mean => IsGiven ? Values.Average() : 0;

    /// <summary>Smallest reading; 0 when there is none.</summary>
    public double Least => IsGiven ? Values.Min() : 0;

    /// <summary>Largest reading; 0 when there is none.</summary>
    public double Most => IsGiven ? Values.Max() : 0;

    /// <summary>Largest less smallest.</summary>
    public double Spread => Most - Least;

    /// <summary>The same thing as if the tape had read just this, once; not measured stays not measured.</summary>
    public Readings Put(double value) => IsGiven ? Of(value) : this;
}
