using Xunit;

namespace Rodwright.Tests.Architecture;

/// <summary>Geometry &lt;- Stairs &lt;- Joinery &lt;- Rod -&gt; Drawings -&gt; Geometry; Rod &lt;- Workshop &lt;- Store; the program sees all.</summary>
public class ReferenceGraphTests
{
    public static TheoryData<string> Libraries => [.. House.MayKnow.Keys];

    /// <summary>Packages, each with the one project it is hidden behind, or the few.</summary>
    public static TheoryData<string, string[]> Doors => new()
    {
        { "NetTopologySuite", ["Rodwright.Geometry"] },
        { "MathNet.Numerics", ["Rodwright.Geometry"] },
        { "PdfSharp", ["Rodwright.Drawings"] },
        { "QRCoder", ["Rodwright.Drawings"] },
        { "SharpGLTF", ["Rodwright.Drawings"] },
        { "Microsoft.EntityFrameworkCore", ["Rodwright.Store", "Rodwright.Store.Postgres", "Rodwright.Store.Sqlite"] },
        { "Microsoft.Data.Sqlite", ["Rodwright.Store.Sqlite"] },
        { "Npgsql", ["Rodwright.Store.Postgres"] },
    };

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_library_uses_only_the_libraries_before_it(string library)
    {
        var used = House.Built(library).GetReferencedAssemblies().Select(a => a.Name!).Where(n => n.StartsWith("Rodwright", StringComparison.OrdinalIgnoreCase));
        Assert.Empty(used.Except(House.MayKnow[library]));
    }

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_project_file_asks_only_for_the_libraries_before_it(string library) =>
        Assert.Empty(House.AskedFor(library, "ProjectReference").Except(House.MayKnow[library]));

    [Fact]
    public void Every_project_under_src_is_in_the_graph()
    {
        var projects = Directory.GetFiles(Path.Combine(House.Root, "src"), "*.csproj", SearchOption.AllDirectories).Select(f => Path.GetFileNameWithoutExtension(f)!);
        Assert.Equal(House.MayKnow.Keys.Append("Rodwright").Order(StringComparer.Ordinal), projects.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Doors))]
    public void A_package_stays_behind_its_door(string package, string[] doors)
    {
        var users = House.MayKnow.Keys.Where(l => House.Built(l).GetReferencedAssemblies().Any(a => a.Name!.StartsWith(package, StringComparison.OrdinalIgnoreCase)));
        Assert.Equal(doors, users);
    }
}
