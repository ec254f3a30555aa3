using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Regulations;

/// <summary>The tables a job may be judged by: the published ones and, where a shop has made any, its own. A value: whoever sets out is given one. Immutable.</summary>
public sealed class RegulationShelf
{
    /// <summary>What the id of every own table begins with, so that none can pose as a standard.</summary>
    public const string OwnPrefix = "own-";

    private RegulationShelf(ImmutableArray<Regulation> own) => Own = own;

    /// <summary>The published tables alone.</summary>
    public static RegulationShelf Published { get; } = new([]);

    /// <summary>The shop's own tables, by title.</summary>
    public ImmutableArray<Regulation> Own { get; }

    /// <summary>Every table, the published ones first.</summary>
    public IEnumerable<Regulation> All => RegulationCatalogue.All.Concat(Own);

    /// <summary>The shelf with a shop's tables beside the published ones; a table with the id of another takes its place.</summary>
    /// <exception cref="ArgumentException">An id that is not an own one.</exception>
    public RegulationShelf With(params IEnumerable<Regulation> own)
    {
        var tables = Own.ToDictionary(t => t.Id);
        foreach (var table in own)
        {
            if (!IsOwn(table.Id)) throw new ArgumentException($"{table.Id} does not begin with {OwnPrefix}", nameof(own));
            tables[table.Id] = table;
        }
        return new([.. tables.Values.OrderBy(t => t.Title, StringComparer.Ordinal).ThenBy(t => t.Id, StringComparer.Ordinal)]);
    }

    /// <summary>Whether another shelf holds the same tables, written alike.</summary>
    public bool HoldsSame(RegulationShelf other) => Own.Select(t => t.WrittenAs).SequenceEqual(other.Own.Select(t => t.WrittenAs));

    /// <summary>The published tables, and one more where it is a shop's own.</summary>
    public static RegulationShelf Holding(Regulation table) => table.IsOwn ? Published.With(table) : Published;

    /// <summary>The table with an id; null when there is none.</summary>
    public Regulation? Find(string id) => IsOwn(id) ? Own.FirstOrDefault(t => t.Id == id) : RegulationCatalogue.Find(id);

    /// <summary>The id of a table most like a misspelt one; null when none is near enough to be meant.</summary>
    public string? Nearest(string id) => NearestName.To(id, All.Select(t => t.Id));

    /// <summary>The finding for a table of the shop's own that is not here.</summary>
    public Finding Missing(string id) => new(JobCodes.Regulation, Severity.Error, "regulation",
        $"the shop's own table {id} is not here; {(Own.IsEmpty ? "there is none" : "here: " + string.Join(", ", Own.Select(t => t.Id)))}",
        NearestName.To(id, Own.Select(t => t.Id)) is { } near ? $"did you mean {near}?" : "bring its file, NAME.regulation.json, here first: into the folder regulations beside the job, or to the page of regulations; or judge the job by another table");

    /// <summary>Whether an id is that of a shop's own table, whether there is one or not.</summary>
    public static bool IsOwn(string id) => id.StartsWith(OwnPrefix, StringComparison.Ordinal);
}
