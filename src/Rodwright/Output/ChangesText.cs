using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Revisions;
using Rodwright.Workshop.Edits;

namespace Rodwright.Output;

/// <summary>A comparison of two jobs as text.</summary>
internal static class ChangesText
{
    public static void Write(TextWriter to, Stair before, Stair now, StairChanges changes, bool all)
    {
        var fields = JobEdits.Differences(before.Job, now.Job);
        to.WriteLine(fields.IsEmpty ? "The jobs are the same." : "In the job:");
        foreach (var field in fields) to.WriteLine($"  {field.Words}{(field.Unit.Length > 0 ? " " + field.Unit : "")}");
        to.WriteLine();
        to.WriteLine(changes.Pieces.IsEmpty ? $"All {Count(changes.Same, "piece")} stay as they are." : "Pieces:");
        foreach (var piece in changes.Pieces)
        {
            to.WriteLine($"  {piece.Mark,-6} {piece.Name}: {Words(piece.Kind, "make it", "no longer needed", "changed")}");
            foreach (var own in piece.Differences.Where(d => all || !d.IsCut)) to.WriteLine($"           {own.What}: {own.Words}");
            if (!all && piece.Differences.Where(d => d.IsCut).ToList() is { Count: > 0 } cuts) to.WriteLine($"           {Cuts(now, cuts)}");
        }
        if (!changes.Pieces.IsEmpty) to.WriteLine($"  {Count(changes.Same, "piece")} unchanged.");
        to.WriteLine();
        to.WriteLine(changes.Sheets.IsEmpty ? $"None of the {Count(changes.SameSheets, "sheet")} need be printed again." : "Sheets:");
        foreach (var sheet in changes.Sheets)
            to.WriteLine($"  {Words(sheet.Kind, "print", "take out", "print again"),-12} {(sheet.Set == "set" ? "" : "true size: ")}{Number.Print(sheet.Number, 0)}  {sheet.Title}");
        if (!changes.Sheets.IsEmpty) to.WriteLine($"  {Count(changes.SameSheets, "sheet")} can stay, though its number in the set may be another.");
    }

    /// <summary>A piece's cuts in one line: how many, and how far the worst of them.</summary>
    private static string Cuts(Stair now, List<PieceDifference> cuts)
    {
        var worst = cuts.Max(d => Math.Abs(d.By ?? 0));
        return $"{Count(cuts.Count, "cut")} {(cuts.Count == 1 ? "is" : "are")} another{(worst > 0 ? $", by up to {now.Units.Print(worst, 2)}" : "")}: {string.Join(", ", cuts.Take(2).Select(d => d.What))}{(cuts.Count > 2 ? ", and so on" : "")}";
    }

    private static string Words(ChangeKind kind, string added, string removed, string changed) => kind switch { ChangeKind.Added => added, ChangeKind.Removed => removed, _ => changed };

    private static string Count(int n, string what) => $"{Number.Print(n, 0)} {what}{(n == 1 ? "" : "s")}";
}
