namespace Rodwright.Testing;

/// <summary>The sample jobs of the repository, found from wherever the tests run.</summary>
public static class Samples
{
    /// <summary>The samples folder, found by walking up from the tests' own folder.</summary>
    public static string Folder { get; } = Find();

    /// <summary>Names of the samples, without the ending, in order.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.GetFiles(Folder, "*.stair.json").Select(f => Path.GetFileName(f)[..^".stair.json".Length]).Order(StringComparer.Ordinal)];

    /// <summary>Path of a sample.</summary>
    public static string PathOf(string name) => Path.Combine(Folder, name + ".stair.json");

    /// <summary>Text of a sample.</summary>
    public static string Text(string name) => File.ReadAllText(PathOf(name));

    /// <summary>A sample as a job.</summary>
    public static Stairs.Jobs.Job Job(string name) =>
        Stairs.Jobs.JobFile.Read(Text(name)) is { Value: { } job } ? job : throw new InvalidOperationException($"the sample {name} does not read");

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var samples = Path.Combine(folder.FullName, "samples");
            if (Directory.Exists(samples) && Directory.GetFiles(samples, "*.stair.json").Length > 0) return samples;
        }
        throw new InvalidOperationException("there is no samples folder above the tests");
    }
}
