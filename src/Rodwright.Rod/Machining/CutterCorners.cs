using Rodwright.Geometry;
using Rodwright.Geometry.Offsets;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Machining;

/// <summary>
/// Where a round cutter does not come into a part's inside corners. Each recess is cleared from its face down, with everything as deep or deeper on that face, and everything
/// outside the outline, already open to the cutter: where a housing runs out through an edge there is no corner. Bores are drilled, a newel is split by the saw, and what lies beneath a face
/// is cut from the edge: these have none.
/// </summary>
public static class CutterCorners
{
    // So much, mm, is taken off the outline before recesses are, so that what ends on it to the last digit runs out through it.
    private const double Skin = 0.002;

    // A corner of the recesses put together is the corner of one of them, mm.
    private const double Same = 0.02;

    /// <summary>What a cutter leaves of a part's cuts and outline, face by face.</summary>
    /// <param name="part">The part.</param>
    /// <param name="cutter">The cutter, mm across.</param>
    public static IReadOnlyList<LeftByCutter> Of(Part part, double cutter)
    {
        var left = new List<LeftByCutter>();
        // A bent riser is cut to length and width as a flat board.
        if (part.Kind == PartKind.BentRiser) return left;
        for (var i = 0; i < (part.Kind.IsPost() ? part.Faces.Length : 1); i++)
        {
            var outline = part.Faces[i].Outline;
            if (RoundCutter.TryLeft([outline.Reversed()], cutter / 2, out var outside)) left.AddRange(outside.Select(p => Spot(part, i, null, p, cutter)));
            else left.Add(NotFollowed(part, i, null, outline));
            var cuts = part.Cuts.Where(c => c.Face == i && c.Beneath == 0 && IsCleared(c.Kind)).ToList();
            if (cuts.Count == 0) continue;
            if (!Offset.TryOf([outline], -Skin, out var board)) board = [outline];
            foreach (var level in cuts.GroupBy(c => Math.Round(c.Depth, 3)).OrderBy(g => g.Key))
            {
                var open = cuts.Where(c => c.Depth >= level.Key - Same).Select(c => c.Shape.Moved(Even)).ToList();
                // What stands round the recesses, turned about: the area outside it is what the cutter may sweep.
                var free = board.SelectMany(b => Region.Difference(b, open)).Select(p => p.Reversed()).ToList();
                if (!RoundCutter.TryLeft(free, cutter / 2, out var inside))
                {
                    left.AddRange(level.Select(c => NotFollowed(part, i, c, c.Shape)));
                    continue;
                }
                left.AddRange(inside.Select(p => (Piece: p, Cut: CutOf(p, level))).Where(p => p.Cut is not null).Select(p => Spot(part, i, p.Cut, p.Piece, cutter)));
            }
        }
        return [.. left.Where(l => l.Away > Tolerance.Print)];
    }

    private static bool IsCleared(CutKind kind) => kind is CutKind.Housing or CutKind.CornerHousing or CutKind.Mortice or CutKind.Haunch or CutKind.TenonCheek or CutKind.Cheek
        or CutKind.Groove or CutKind.Recess or CutKind.Notch;

    /// <summary>The cut whose corner it is, or whose edge, for an arc; null when it belongs to no cut of this depth.</summary>
    private static Cut? CutOf(LeftPiece piece, IEnumerable<Cut> cuts) => piece.Corners.IsEmpty
        ? cuts.FirstOrDefault(c => piece.Shape.Vertices.All(v => c.Shape.DistanceTo(v.At) < Same))
        : piece.Corners.Select(corner => cuts.FirstOrDefault(c => HasCorner(c.Shape, corner.At))).FirstOrDefault(c => c is not null);

    private static LeftByCutter Spot(Part part, int face, Cut? cut, LeftPiece piece, double cutter)
    {
        var one = piece.Corners.Length == 1 && piece.Away <= Usual(piece.Corners[0].Opening, cutter) + Same ? piece.Corners[0] : null;
        var kind = one is not null ? cut?.Seat is null || HasCorner(cut.Seat, one.At) ? LeftKind.Square : LeftKind.MayStay
            : piece.Corners.IsEmpty && piece.Tightest < cutter / 2 ? LeftKind.TightArc : LeftKind.Narrow;
        var shape = MachiningFrame.Place(part, face, piece.Shape);
        return new(part, face, (cut is null ? MachiningLayers.Outline : MachiningLayers.Of(cut)).Name, cut, kind,
            one is null ? shape.Bounds.Centre : MachiningFrame.Place(part, face, one.At), one?.Opening, piece.Away, shape);
    }

    private static LeftByCutter NotFollowed(Part part, int face, Cut? cut, Path2 shape)
    {
        var placed = MachiningFrame.Place(part, face, shape);
        return new(part, face, (cut is null ? MachiningLayers.Outline : MachiningLayers.Of(cut)).Name, cut, LeftKind.NotFollowed, placed.Bounds.Centre, null, double.PositiveInfinity, placed);
    }

    /// <summary>How far a cutter stays out of a corner both of whose sides it runs along; where it stays out farther the place is too narrow for it.</summary>
    private static double Usual(Angle opening, double cutter) => cutter / 2 * (1 / Angle.Sin(opening.Radians / 2) - 1);

    /// <summary>To a millionth: recesses side by side that miss one another by the last digit would leave a wall without thickness.</summary>
    private static Point2 Even(Point2 p) => new(Math.Round(p.X, 6), Math.Round(p.Y, 6));

    private static bool HasCorner(Path2 shape, Point2 p) => shape.Vertices.Any(v => v.At.DistanceTo(p) < Same);
}
