using System.Collections.Immutable;

namespace Rodwright.Workshop.Shelf;

/// <summary>Some of the jobs found.</summary>
/// <param name="Cards">In the order asked for.</param>
/// <param name="Total">How many there are in all.</param>
public sealed record ShelfPage(ImmutableArray<JobCard> Cards, int Total);
