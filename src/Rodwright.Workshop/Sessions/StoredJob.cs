using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Sessions;

/// <summary>Jobs as the shelf keeps them.</summary>
internal static class StoredJob
{
    /// <summary>The job of a stored text.</summary>
    /// <exception cref="InvalidDataException">It does not read: stored texts were read well once, so the store or the program is at fault.</exception>
    public static Job Read(string text)
    {
        var outcome = JobFile.Read(text);
        return outcome.Value ?? throw new InvalidDataException("a stored job does not read: " + string.Join("; ", outcome.Findings.Select(f => $"{f.Where}: {f.Message}")));
    }
}
