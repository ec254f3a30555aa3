using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations;

/// <summary>One row of a regulation's table.</summary>
/// <param name="Number">Clause, paragraph or table of the document.</param>
/// <param name="Rule">What is measured.</param>
/// <param name="Limit">What is allowed.</param>
/// <param name="Evidence">How well the number is known.</param>
/// <param name="Source">What the document says, in a few words of our own or of its own.</param>
/// <param name="Weight">Whether a stair that does not keep it breaks the regulation.</param>
public sealed record Clause(string Number, Rule Rule, Limit Limit, Evidence Evidence, string Source, Weight Weight)
{
    /// <summary>Why the clause does not apply to a stair; null when it does. Most clauses always apply.</summary>
    public Func<StairPlan, string?> Except { get; init; } = _ => null;

    /// <summary>Whether a shop has written it into a table of its own.</summary>
    public bool IsOwn { get; init; }

    /// <summary>A clause this version cannot measure.</summary>
    public static Clause NotChecked(string number, Rule rule, Evidence evidence, string source) =>
        NotChecked(number, rule, Limit.None, evidence, source);

    /// <summary>A clause this version cannot measure, with the limit it states.</summary>
    public static Clause NotChecked(string number, Rule rule, Limit limit, Evidence evidence, string source) =>
        new(number, rule, limit, evidence, source, evidence == Evidence.Memory ? Weight.Advice : Weight.Limit);
}

/// <summary>What it means when a clause is not kept.</summary>
public enum Weight
{
    /// <summary>The stair does not follow the regulation.</summary>
    Limit,

    /// <summary>The stair could be better, or the number is not certain enough to fail a stair by.</summary>
    Advice,
}
