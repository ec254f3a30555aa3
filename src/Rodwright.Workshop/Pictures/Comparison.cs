using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures;

/// <summary>What changes when a job is judged, and set out, by another regulation.</summary>
/// <param name="After">The other regulation.</param>
/// <param name="Clauses">Every clause of its table, in the table's order; then what only the table before asked for.</param>
/// <param name="Geometry">What moves on the stair, in words; empty when nothing does.</param>
public sealed record Comparison(Regulation After, ImmutableArray<ClauseChange> Clauses, ImmutableArray<string> Geometry)
{
    /// <summary>The comparison; null when one of the tables is not in the catalogue or the stair cannot be set out by it.</summary>
    /// <param name="job">The job; its own regulation is not asked.</param>
    /// <param name="before">Id of one regulation.</param>
    /// <param name="after">Id of the other.</param>
    /// <param name="tables">Where both are looked up; among the published ones when null.</param>
    public static Comparison? Of(Job job, string before, string after, RegulationShelf? tables = null)
    {
        tables ??= RegulationShelf.Published;
        if (tables.Find(before) is null || tables.Find(after) is not { } table) return null;
        if (Stair.SetOut(job with { Regulation = before }, shelf: tables).Value is not { } was || Stair.SetOut(job with { Regulation = after }, shelf: tables).Value is not { } now) return null;
        return new(table, [.. ChangesOfClauses.Between(was.Regulation, now.Regulation)], [.. ChangesOfPlan.Between(was.Plan, now.Plan)]);
    }
}
