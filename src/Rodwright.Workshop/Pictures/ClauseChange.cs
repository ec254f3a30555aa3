namespace Rodwright.Workshop.Pictures;

/// <summary>What becomes of one clause when another regulation is taken.</summary>
/// <param name="Title">What is measured, and the clause's number.</param>
/// <param name="Changed">Whether outcome, measurement or limit differ from before.</param>
/// <param name="Words">How it comes out and how it came out before: "kept: 225 mm where at least 220 mm is allowed; was 223 mm".</param>
public sealed record ClauseChange(string Title, bool Changed, string Words);
