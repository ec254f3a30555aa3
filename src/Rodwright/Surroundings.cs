namespace Rodwright;

/// <summary>What the program touches of the outside world.</summary>
/// <param name="Out">Results.</param>
/// <param name="Error">Findings and progress.</param>
/// <param name="Time">The clock.</param>
/// <param name="IsTerminal">Whether somebody watches: progress is shown only then.</param>
public sealed record Surroundings(TextWriter Out, TextWriter Error, TimeProvider Time, bool IsTerminal = false);
