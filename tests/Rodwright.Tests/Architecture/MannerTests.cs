using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Xunit;

namespace Rodwright.Tests.Architecture;

/// <summary>How types and files are made.</summary>
public partial class MannerTests
{
    /// <summary>Files of more than 400 lines, each with its reason.</summary>
    private static readonly ImmutableDictionary<string, string> LongFiles = ImmutableDictionary<string, string>.Empty;

    /// <summary>Folders of files that a tool wrote, and named after its own needs (a migration after its moment). All else is asked of them too.</summary>
    private static readonly ImmutableArray<string> WrittenByTools = ["Migrations", "Compiled"];

    public static TheoryData<string> Libraries => [.. House.MayKnow.Keys];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_public_class_is_sealed_abstract_or_static(string library) =>
        Assert.Empty(Public(library).Where(t => t.IsClass && !t.IsSealed && !t.IsAbstract).Select(t => t.FullName));

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_public_value_cannot_be_changed_once_made(string library)
    {
        var properties = Public(library).SelectMany(t => t.GetProperties(Everything)).Where(p => p.SetMethod is { IsPublic: true } set && !IsInit(set));
        var fields = Public(library).Where(t => !t.IsEnum).SelectMany(t => t.GetFields(Everything)).Where(f => f.IsPublic && !f.IsInitOnly && !f.IsLiteral);
        Assert.Empty(properties.Select(p => $"{p.DeclaringType}.{p.Name}").Concat(fields.Select(f => $"{f.DeclaringType}.{f.Name}")));
    }

    [Fact]
    public void A_file_is_at_most_400_lines_or_has_a_reason() =>
        Assert.Empty(House.Sources.Where(f => File.ReadLines(f).Count() > 400).Select(f => Path.GetRelativePath(House.Root, f)).Except(LongFiles.Keys));

    [Fact]
    public void A_folder_is_a_namespace()
    {
        Assert.NotEmpty(House.Sources);
        Assert.Empty(House.Sources.Where(f => NamespaceLine().Match(File.ReadAllText(f)) is { Success: true } m && m.Groups[1].Value != FolderName(f)).Select(f => Path.GetRelativePath(House.Root, f)));
    }

    [Fact]
    public void A_file_is_named_after_a_type_it_holds() =>
        Assert.Empty(House.Sources.Where(f => !WrittenByTools.Contains(Path.GetFileName(Path.GetDirectoryName(f)!)))
            .Where(f => Path.GetFileNameWithoutExtension(f) is var name && name is not ("Program" or "AssemblyInfo") &&
            !Regex.IsMatch(File.ReadAllText(f), $@"\b(class|record|struct|interface|enum)\s+{Regex.Escape(name.Split('.')[0])}\b")).Select(f => Path.GetRelativePath(House.Root, f)));

    [Fact]
    public void Nothing_is_called_a_manager_a_helper_or_utils() =>
        Assert.Empty(House.MayKnow.Keys.SelectMany(l => House.Built(l).GetTypes()).Where(t => VagueName().IsMatch(t.Name)).Select(t => t.FullName));

    private const BindingFlags Everything = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>Components of a page are classes as their framework wants them: it sets their parameters and derives nothing.</summary>
    private static IEnumerable<Type> Public(string library) =>
        House.Built(library).GetExportedTypes().Where(t => !typeof(Microsoft.AspNetCore.Components.IComponent).IsAssignableFrom(t) && t.Name != "_Imports");

    private static bool IsInit(MethodInfo set) => set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static string FolderName(string file) => Path.GetRelativePath(Path.Combine(House.Root, "src"), Path.GetDirectoryName(file)!).Replace(Path.DirectorySeparatorChar, '.');

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex("Manager|Helper|Utils|Utilities")]
    private static partial Regex VagueName();
}
