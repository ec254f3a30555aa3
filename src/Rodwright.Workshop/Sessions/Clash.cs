using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Workshop.Sessions;

/// <summary>A change that was not kept because somebody else was first; the person chooses what becomes of it.</summary>
/// <param name="Base">The job both started from.</param>
/// <param name="Mine">The job as this person wanted it.</param>
/// <param name="Words">What this person changed.</param>
/// <param name="Others">What the others changed meanwhile, oldest first.</param>
public sealed record Clash(Job Base, Job Mine, string Words, ImmutableArray<RevisionNote> Others);
