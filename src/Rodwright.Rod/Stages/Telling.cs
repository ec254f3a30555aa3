namespace Rodwright.Rod.Stages;

/// <summary>What is said once for lines that are found alike; their distances then stand in a table.</summary>
/// <param name="Id">The same for all of them.</param>
/// <param name="What">What to do with each distance of the table.</param>
/// <param name="Why">Why, for all.</param>
/// <param name="Lines">What the lines are, in the plural: "riser lines".</param>
public sealed record Telling(string Id, string Lines, string What, string Why);
