using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;

namespace Rodwright.Workshop.Tables;

/// <summary>Tables as a shop keeps them, read as the engine takes them.</summary>
public static class OwnTableTexts
{
    /// <summary>The published tables and the shop's own. One that no longer reads is left out: a job that names it says that it is not here, the page of tables why.</summary>
    public static async Task<RegulationShelf> Shelf(this IOwnTables tables, CancellationToken stop = default) => Of(await tables.All(stop));

    /// <summary>The shelf of some tables.</summary>
    public static RegulationShelf Of(ImmutableArray<OwnTableCard> cards) =>
        cards.IsEmpty ? RegulationShelf.Published : RegulationShelf.Published.With(cards.Select(c => OwnRegulationFile.Read(c.Text).Value).OfType<OwnRegulation>().Select(t => t.Table()));

    /// <summary>Whether an own table may have an id: no other is looked for, or kept.</summary>
    public static bool IsId(string id) => OwnIds.Are(id);

    /// <summary>The draft of a table.</summary>
    public static OwnTableDraft Draft(OwnRegulation table, string by) => new(table.Id, table.Title, OwnRegulationFile.Write(table), by);

    /// <summary>What the text of a job that is judged by a table holds, and that of no other: it is written by the job file's writer alone.</summary>
    public static string NamedAs(string id) => $"\"regulation\": \"{id}\"";

    /// <summary>Why a table on its way in is not kept when somebody else's of the same id is there.</summary>
    public static Finding Taken(string id) => new(OwnCodes.SameId, Severity.Error, "id", $"a table {id} is kept already", "give this one another id");
}
