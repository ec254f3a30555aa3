using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Revisions;

/// <summary>
/// Which pieces differ between two kits. Pieces are known again by their ids, and compared as they lie on the bench (see <see cref="MachiningFrame"/>): a piece that only stands elsewhere in the stair is the
/// same piece.
/// </summary>
internal static class PieceChanges
{
    public static ImmutableArray<PieceChange> Of(Kit before, Kit now)
    {
        var known = before.Parts.ToDictionary(p => p.Id);
        var left = now.Parts.Select(p => p.Id).ToHashSet();
        var units = now.Plan.Units;
        var changes = new List<PieceChange>();
        foreach (var part in now.Parts)
        {
            if (!known.TryGetValue(part.Id, out var old)) changes.Add(new(part.Id, part.Mark, part.Name, ChangeKind.Added, []));
            else if (Differences(old, part, units).ToImmutableArray() is { IsEmpty: false } found) changes.Add(new(part.Id, part.Mark, part.Name, ChangeKind.Changed, found));
        }
        changes.AddRange(before.Parts.Where(p => !left.Contains(p.Id)).Select(p => new PieceChange(p.Id, p.Mark, p.Name, ChangeKind.Removed, [])));
        return [.. changes];
    }

    private static IEnumerable<PieceDifference> Differences(Part old, Part now, Units units) =>
    [
        .. Words("mark", old.Mark, now.Mark), .. Words("material", old.Material, now.Material),
        .. Size("length of the board", old.Blank.Length, now.Blank.Length, units), .. Size("width of the board", old.Blank.Width, now.Blank.Width, units),
        .. Size("thickness", old.Blank.Thickness, now.Blank.Thickness, units), .. JointedUp(old, now, units), .. Outlines(old, now, units), .. Cuts(old, now, units).Select(d => d with { IsCut = true }),
    ];

    private static IEnumerable<PieceDifference> Words(string what, string old, string now)
    {
        if (old != now) yield return new(what, old, now, null, $"{now} instead of {old}");
    }

    private static IEnumerable<PieceDifference> Size(string what, double old, double now, Units units)
    {
        if (Math.Abs(now - old) <= Tolerance.Joint) yield break;
        yield return new(what, units.Print(old), units.Print(now), now - old, $"{units.Print(now)} instead of {units.Print(old)}: {units.Print(Math.Abs(now - old), 2)} {(now > old ? "more" : "less")}");
    }

    private static IEnumerable<PieceDifference> JointedUp(Part old, Part now, Units units)
    {
        var known = old.Blank.JointedUp.ToDictionary(j => j.Mark);
        foreach (var piece in now.Blank.JointedUp)
        {
            var what = $"piece {now.Mark}{piece.Mark} jointed on";
            if (!known.Remove(piece.Mark, out var before)) yield return new(what, "", Sized(piece), null, $"new, {Sized(piece)}");
            else if (Corners(before.Place).Zip(Corners(piece.Place)).Max(c => Math.Abs(c.First - c.Second)) is > Tolerance.Joint and var by)
                yield return new(what, Sized(before), Sized(piece), by, $"{Sized(piece)} instead of {Sized(before)}, its edges up to {units.Print(by, 2)} elsewhere");
        }
        foreach (var gone in known.Values) yield return new($"piece {now.Mark}{gone.Mark} jointed on", Sized(gone), "", null, "no longer there");

        string Sized(JointedPiece piece) => $"{units.Print(piece.Length)} by {units.Print(piece.Width)}";

        static double[] Corners(Box2 box) => [box.MinX, box.MinY, box.MaxX, box.MaxY];
    }

    private static IEnumerable<PieceDifference> Outlines(Part old, Part now, Units units)
    {
        for (var f = 0; f < now.Faces.Length; f++)
        {
            var what = now.Faces.Length == 1 ? "outline" : $"outline of the {(now.Kind == PartKind.Newel ? "face " : "")}{now.Faces[f].Looks}";
            if (f >= old.Faces.Length) yield return new(what, "", "", null, "new");
            else if (Apart(MachiningFrame.Place(old, f, old.Faces[f].Outline), MachiningFrame.Place(now, f, now.Faces[f].Outline)) is > Tolerance.Joint and var by)
                yield return new(what, "", "", by, $"up to {units.Print(by, 2)} elsewhere");
        }
    }

    private static IEnumerable<PieceDifference> Cuts(Part old, Part now, Units units)
    {
        var known = old.Cuts.ToDictionary(c => c.Id);
        foreach (var cut in now.Cuts)
        {
            var what = Feature(now, cut, units);
            if (!known.Remove(cut.Id, out var before))
            {
                yield return new(what, "", "", null, "new");
                continue;
            }
            foreach (var depth in Size("depth of the " + what, before.Depth, cut.Depth, units)) yield return depth;
            if (before.Face != cut.Face) yield return new(what, Face(old, before), Face(now, cut), null, $"on {Face(now, cut)} instead of {Face(old, before)}");
            else if (Moved(MachiningFrame.Place(old, before.Face, before.Shape), MachiningFrame.Place(now, cut.Face, cut.Shape), now, units) is { } moved)
                yield return new(what, "", "", moved.By, moved.Words);
        }
        foreach (var gone in known.Values) yield return new(Feature(old, gone, units), "", "", null, "no longer there");

        static string Face(Part part, Cut cut) => part.Kind == PartKind.Newel ? "face " + part.Faces[cut.Face].Looks : "the " + part.Faces[cut.Face].Looks;
    }

    private static string Feature(Part part, Cut cut, Units units) =>
        PieceOrdinates.FeatureOf(cut, units) + (part.Kind == PartKind.Newel ? $", face {part.Faces[cut.Face].Looks}" : "");

    /// <summary>How far a cut lies from where it was, as one piece where its shape is the same; null where it has not moved.</summary>
    private static (double By, string Words)? Moved(Path2 old, Path2 now, Part part, Units units)
    {
        var by = Apart(old, now);
        if (by <= Tolerance.Joint) return null;
        var way = now.Bounds.Centre - old.Bounds.Centre;
        if (way.Length <= Tolerance.Joint || Apart(old.Moved(p => p + way), now) > Tolerance.Joint) return (by, $"of another shape, up to {units.Print(by, 2)} elsewhere");
        var (along, across) = part.Kind == PartKind.Newel ? ("to the right", "up") : ("along the board", "across it");
        var parts = new[] { (way.X, along), (way.Y, across) }.Where(m => Math.Abs(m.Item1) > Tolerance.Joint).Select(m => $"{units.Print(m.Item1, 2)} {m.Item2}");
        return (way.Length, "moved " + string.Join(" and ", parts));
    }

    /// <summary>How far two paths are apart where they are furthest from one another.</summary>
    private static double Apart(Path2 a, Path2 b) => Math.Max(Furthest(a, b), Furthest(b, a));

    private static double Furthest(Path2 of, Path2 from) => of.Flattened(Tolerance.Chord).Max(from.DistanceTo);
}
