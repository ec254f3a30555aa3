using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Workshop.Edits;

/// <summary>What a field is called where fields of all groups stand side by side: labels that occur in two groups are told apart by the group.</summary>
public static class FieldLabels
{
    private static readonly ImmutableHashSet<string> Shared =
        [.. JobFields.Descriptions.GroupBy(d => d.Label).Where(g => g.Select(d => d.Group).Distinct().Count() > 1).Select(g => g.Key)];

    /// <summary>The label, unlike that of every other field: "tread wedge: length".</summary>
    public static string Of(FieldDescription field)
    {
        if (!Shared.Contains(field.Label)) return field.Label;
        // "length of the wedge" in the group "tread wedge": the group says it already.
        var last = field.Group[(field.Group.LastIndexOf(' ') + 1)..];
        var at = field.Label.IndexOf($" of the {last}", StringComparison.Ordinal);
        return $"{field.Group}: {(at < 0 ? field.Label : field.Label[..at])}";
    }
}
