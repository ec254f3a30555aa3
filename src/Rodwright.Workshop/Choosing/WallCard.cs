using Rodwright.Stairs.Proposals;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Choosing;

/// <summary>One proposal as it hangs on the wall.</summary>
/// <param name="Rank">1 for the best by the ranking; it keeps its number however the wall is sorted.</param>
/// <param name="Proposal">The stair.</param>
/// <param name="Plan">Its small plan.</param>
public sealed record WallCard(int Rank, Proposal Proposal, Picture Plan);
