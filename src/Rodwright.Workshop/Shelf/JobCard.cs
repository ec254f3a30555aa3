namespace Rodwright.Workshop.Shelf;

/// <summary>A job as it stands on the shelf.</summary>
/// <param name="Id">For ever.</param>
/// <param name="Title">Of its newest revision.</param>
/// <param name="Summary">Of its newest revision.</param>
/// <param name="Revision">Number of its newest revision.</param>
/// <param name="ChangedBy">Who made that one.</param>
/// <param name="ChangedAt">When, UTC.</param>
/// <param name="Archived">Put away: found only when asked for.</param>
public sealed record JobCard(Guid Id, string Title, string Summary, int Revision, string ChangedBy, DateTimeOffset ChangedAt, bool Archived);
