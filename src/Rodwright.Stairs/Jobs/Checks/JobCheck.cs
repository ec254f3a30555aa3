using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>One way in which fields that are each in order contradict one another.</summary>
/// <param name="Code">Code of its finding.</param>
/// <param name="Where">The field to change first.</param>
/// <param name="Reads">Every field it compares: it is passed over when one of them was refused.</param>
/// <param name="Find">What is wrong and what would help, or null.</param>
internal sealed record JobCheck(string Code, string Where, ImmutableArray<string> Reads, Func<Job, Pinch?> Find)
{
    /// <summary>An error unless said otherwise.</summary>
    public Severity Severity { get; init; } = Severity.Error;

    public void Apply(JobReading reading, Job job)
    {
        if (!reading.IsSound([.. Reads]) || Find(job) is not { } pinch) return;
        if (Severity == Severity.Error) reading.Contradict(Code, Where, pinch.Message, pinch.Hint, pinch.Ways);
        else reading.Note(Code, Where, pinch.Message, pinch.Hint);
    }
}

/// <summary>Where it pinches and what would free it.</summary>
/// <param name="Message">What pinches.</param>
/// <param name="Hint">What would free it, in words.</param>
/// <param name="Ways">What may free it at one press; tried by the reader.</param>
internal sealed record Pinch(string Message, string Hint, params ImmutableArray<Way> Ways);
