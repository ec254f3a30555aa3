using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Starts;

/// <summary>The sample jobs that come with the program, to begin from.</summary>
public static class SampleJobs
{
    /// <summary>Every sample, by title.</summary>
    public static ImmutableArray<Job> All { get; } = [.. Read().OrderBy(j => j.Title, StringComparer.Ordinal)];

    private static IEnumerable<Job> Read()
    {
        var assembly = typeof(SampleJobs).Assembly;
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.EndsWith(".stair.json", StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            yield return JobFile.Read(reader.ReadToEnd()).Value ?? throw new InvalidDataException($"{name} is no job");
        }
    }
}
