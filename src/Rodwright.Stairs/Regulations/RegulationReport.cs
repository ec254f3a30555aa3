using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;

namespace Rodwright.Stairs.Regulations;

/// <summary>A stair judged clause by clause: every clause of the table is here, whatever came of it.</summary>
/// <param name="Id">Id of the table.</param>
/// <param name="Title">Its title with edition.</param>
/// <param name="Measures">Which going and which narrow end it limits, in words.</param>
/// <param name="Checks">One per clause, in the table's order.</param>
/// <param name="Findings">A breach for each clause that failed, advice for each that was only advised.</param>
public sealed record RegulationReport(string Id, string Title, string Measures, ImmutableArray<ClauseCheck> Checks, ImmutableArray<Finding> Findings)
{
    /// <summary>Whether no clause failed.</summary>
    public bool Passes => Checks.All(c => c.Outcome != CheckOutcome.Fail);

    /// <summary>How many clauses rest on a number that was not checked against the document.</summary>
    public int FromMemory => Checks.Count(c => c.Clause.Evidence == Evidence.Memory);

    /// <summary>The same in a sentence; empty when every number was.</summary>
    public string DoubtWords => FromMemory switch
    {
        0 => "",
        1 => "One clause is from memory: not checked against the document.",
        var n => $"{Number.Print(n)} clauses are from memory: not checked against the document.",
    };

    /// <summary>How many clauses came out one way.</summary>
    public int Count(CheckOutcome outcome) => Checks.Count(c => c.Outcome == outcome);
}
