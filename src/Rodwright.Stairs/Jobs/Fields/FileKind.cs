using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>What a text is read as, in the words of its findings.</summary>
/// <param name="Name">"job file".</param>
/// <param name="Thing">What one file holds: "job".</param>
/// <param name="Start">How such a file starts, as a hint.</param>
/// <param name="Fields">Every field of it, so that one in the wrong place is told where it belongs.</param>
internal sealed record FileKind(string Name, string Thing, string Start, Func<ImmutableArray<FieldDescription>> Fields)
{
    /// <summary>A job file.</summary>
    public static FileKind Job { get; } = new("job file", "job", "a job file starts with { \"rodwright\": 1, \"title\": …", () => JobFields.Descriptions);
}
