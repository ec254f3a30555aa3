using System.Collections.Immutable;
using Rodwright.Rod.Packs;

namespace Rodwright.Rod.Revisions;

/// <summary>What is another in a stair than in an earlier one: which pieces are to be made or altered, and which sheets to be printed again.</summary>
/// <param name="Pieces">Pieces added, removed and changed, in the order of the parts list; those removed last.</param>
/// <param name="Same">How many pieces are what they were.</param>
/// <param name="Sheets">Sheets added, removed and changed. The number of a sheet in its set alone is no change.</param>
/// <param name="SameSheets">How many sheets are what they were.</param>
public sealed record StairChanges(ImmutableArray<PieceChange> Pieces, int Same, ImmutableArray<SheetChange> Sheets, int SameSheets)
{
    /// <summary>Compares two stairs, printed alike.</summary>
    /// <param name="before">The earlier one.</param>
    /// <param name="now">The later one; lengths are told in its unit.</param>
    /// <param name="progress">Told, in words, what is being drawn; null for silence.</param>
    public static StairChanges Of(RodJob before, RodJob now, IProgress<string>? progress = null)
    {
        // Paper, scale, date and revision are not what changed in the stair.
        var alike = before with { Style = now.Style };
        var pieces = PieceChanges.Of(before.Stair.Kit, now.Stair.Kit);
        var (sheets, same) = SheetChanges.Of(Pack.Draw(alike, progress), Pack.Draw(now, progress));
        return new(pieces, now.Stair.Kit.Parts.Length - pieces.Count(p => p.Kind != ChangeKind.Removed), sheets, same);
    }

    /// <summary>Whether nothing at all is another.</summary>
    public bool IsNone => Pieces.IsEmpty && Sheets.IsEmpty;
}
