using System.Collections.Immutable;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Xunit;

namespace Rodwright.Tests.Architecture;

/// <summary>Console, files, clock, network and the machine itself exist in the program alone, and in the stores where they must. Read from the built libraries, so that nothing hides in a lambda.</summary>
public class PurityTests
{
    /// <summary>Types a library never names; a name that ends in a point is a whole namespace.</summary>
    private static readonly ImmutableArray<string> Types =
    [
        "System.Console", "System.TimeProvider", "System.Diagnostics.Process", "System.Diagnostics.Stopwatch",
        "System.IO.File", "System.IO.FileInfo", "System.IO.FileStream", "System.IO.Directory", "System.IO.DirectoryInfo", "System.IO.DriveInfo",
        "System.Threading.Timer", "System.Net.", "System.Random",
    ];

    /// <summary>Members a library never calls.</summary>
    private static readonly ImmutableArray<string> Members =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Guid.NewGuid", "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.set_CurrentCulture",
        "System.IO.Path.GetTempPath", "System.IO.Path.GetFullPath",
    ];

    /// <summary>
    /// What some may name beyond that. A clock that is handed in says when a revision was made and what day a sheet shows; elements of a page need names of their
    /// own, and words on it to be escaped. A store keeps what outlives the program. When a revision was kept is asked of a clock that is handed in; SQLite makes the
    /// folder of its file; all else is their database's business.
    /// </summary>
    private static readonly ImmutableDictionary<string, ImmutableArray<string>> Beyond = new Dictionary<string, ImmutableArray<string>>
    {
        ["Rodwright.Workshop"] = ["System.TimeProvider"],
        ["Rodwright.Pages"] = ["System.TimeProvider", "System.Guid.NewGuid", "System.Net.WebUtility"],
        ["Rodwright.Store"] = ["System.TimeProvider"],
        ["Rodwright.Store.Postgres"] = ["System.TimeProvider"],
        ["Rodwright.Store.Sqlite"] = ["System.TimeProvider", "System.IO.Directory", "System.IO.DirectoryInfo", "System.IO.Path.GetFullPath"],
    }.ToImmutableDictionary();

    public static TheoryData<string> Libraries => [.. House.MayKnow.Keys];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_library_touches_no_console_file_clock_or_network(string library)
    {
        var (types, members) = Named(House.FileOf(library));
        var allowed = Beyond.GetValueOrDefault(library, []);
        Assert.NotEmpty(types);
        Assert.DoesNotContain(types.Except(allowed), t => Types.Any(b => b.EndsWith('.') ? t.StartsWith(b, StringComparison.Ordinal) : t == b));
        Assert.DoesNotContain(members.Except(allowed), m => Members.Contains(m));
        // The compiler's own iterators ask which thread they are on; nobody asks for anything else.
        Assert.DoesNotContain(members, m => m.StartsWith("System.Environment.", StringComparison.Ordinal) && m != "System.Environment.get_CurrentManagedThreadId");
    }

    [Fact]
    public void The_reader_of_built_files_sees_what_it_looks_for()
    {
        // These tests themselves name files, so the reading above can fail.
        var (types, members) = Named(typeof(PurityTests).Assembly.Location);
        Assert.Contains("System.IO.File", types);
        Assert.Contains("System.IO.File.Exists", members);
    }

    private static (ImmutableArray<string> Types, ImmutableArray<string> Members) Named(string file)
    {
        using var stream = File.OpenRead(file);
        using var pe = new PEReader(stream);
        var reader = pe.GetMetadataReader();
        var types = reader.TypeReferences.Select(h => Name(reader, h)).ToImmutableArray();
        var members = reader.MemberReferences.Select(reader.GetMemberReference).Where(m => m.Parent.Kind == HandleKind.TypeReference)
            .Select(m => Name(reader, (TypeReferenceHandle)m.Parent) + "." + reader.GetString(m.Name)).ToImmutableArray();
        return (types, members);
    }

    private static string Name(MetadataReader reader, TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        return reader.GetString(type.Namespace) + "." + reader.GetString(type.Name);
    }
}
