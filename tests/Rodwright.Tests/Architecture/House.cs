using System.Collections.Immutable;
using System.Reflection;
using System.Xml.Linq;

namespace Rodwright.Tests.Architecture;

/// <summary>The projects of the house, as built and as written.</summary>
internal static class House
{
    /// <summary>The libraries, each with the libraries of ours it may know. The program may know them all.</summary>
    public static ImmutableSortedDictionary<string, ImmutableArray<string>> MayKnow { get; } = new Dictionary<string, ImmutableArray<string>>
    {
        ["Rodwright.Geometry"] = [],
        ["Rodwright.Cutting"] = [],
        ["Rodwright.Stairs"] = ["Rodwright.Geometry"],
        ["Rodwright.Joinery"] = ["Rodwright.Cutting", "Rodwright.Stairs", "Rodwright.Geometry"],
        ["Rodwright.Drawings"] = ["Rodwright.Geometry"],
        ["Rodwright.Rod"] = ["Rodwright.Joinery", "Rodwright.Stairs", "Rodwright.Drawings", "Rodwright.Geometry"],
        ["Rodwright.Pages"] = ["Rodwright.Workshop", "Rodwright.Rod", "Rodwright.Joinery", "Rodwright.Stairs", "Rodwright.Drawings", "Rodwright.Geometry"],
        ["Rodwright.Store"] = ["Rodwright.Workshop"],
        ["Rodwright.Store.Postgres"] = ["Rodwright.Store", "Rodwright.Workshop"],
        ["Rodwright.Store.Sqlite"] = ["Rodwright.Store", "Rodwright.Workshop"],
        ["Rodwright.Workshop"] = ["Rodwright.Rod", "Rodwright.Joinery", "Rodwright.Stairs", "Rodwright.Drawings", "Rodwright.Geometry"],
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>The repository's root, found by walking up from the tests' own folder.</summary>
    public static string Root { get; } = Find();

    /// <summary>A library as built.</summary>
    public static Assembly Built(string library) => Assembly.Load(library);

    /// <summary>The file a library was built into.</summary>
    public static string FileOf(string library) => Path.Combine(AppContext.BaseDirectory, library + ".dll");

    /// <summary>Names of the projects and packages a project file under src asks for.</summary>
    public static IReadOnlyList<string> AskedFor(string project, string what) =>
        [.. XDocument.Load(Path.Combine(Root, "src", project, project + ".csproj")).Descendants(what)
            .Select(e => e.Attribute("Include")!.Value.Replace('\\', '/')).Select(p => p.EndsWith(".csproj", StringComparison.Ordinal) ? Path.GetFileNameWithoutExtension(p) : p)];

    /// <summary>Every C# file under src.</summary>
    public static IReadOnlyList<string> Sources { get; } = [.. Directory.GetFiles(Path.Combine(Root, "src"), "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Rodwright.slnx"))) return folder.FullName;
        throw new InvalidOperationException("there is no Rodwright.slnx above the tests");
    }
}
