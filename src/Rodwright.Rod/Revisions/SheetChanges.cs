using System.Collections.Immutable;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Packs;

namespace Rodwright.Rod.Revisions;

/// <summary>Which sheets differ between two packs drawn alike: by what is drawn of the pieces, not by frame, title block and key plan.</summary>
internal static class SheetChanges
{
    public static (ImmutableArray<SheetChange> Changes, int Same) Of(Pack before, Pack now)
    {
        var (changes, same) = (new List<SheetChange>(), 0);
        foreach (var (old, new_) in new[] { (before.Set, now.Set), (before.TrueSize, now.TrueSize) })
        {
            var known = old.Sheets.ToDictionary(s => s.Name);
            var drawn = new_.Sheets.AsParallel().AsOrdered().Select(s => (Sheet: s, Kind: KindOf(known.GetValueOrDefault(s.Name), s))).ToList();
            same += drawn.Count(d => d.Kind is null);
            changes.AddRange(drawn.Where(d => d.Kind is not null).Select(d => Change(new_.Name, d.Sheet, d.Kind!.Value)));
            changes.AddRange(old.Sheets.Where(s => new_.Sheets.All(n => n.Name != s.Name)).Select(s => Change(old.Name, s, ChangeKind.Removed)));
        }
        return ([.. changes], same);
    }

    private static ChangeKind? KindOf(Sheet? before, Sheet now) => before is null ? ChangeKind.Added : Drawn(before) == Drawn(now) ? null : ChangeKind.Changed;

    // Without its block a sheet has neither frame nor title. What else lies on the frame's layer tells where a piece or a tile belongs, not how it is made: the key plan, the words along a tile's edge.
    private static string Drawn(Sheet sheet) => SvgWriter.Write(sheet with { Block = null, Title = "", Number = 1, Count = 1, Marks = [.. sheet.Marks.Where(m => m.Layer != Layer.Frame)] });

    private static SheetChange Change(string set, Sheet sheet, ChangeKind kind) => new(set, sheet.Name, sheet.Title, sheet.Number, kind);
}
