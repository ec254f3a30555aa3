using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.SmallParts;

/// <summary>
/// The wedges of treads and risers: what is left of a housing when the piece's end is in it. Treads are wedged first and their wedges trimmed at the back of the riser, so that its wedge can pass (trade-practice.md 4a).
/// </summary>
internal static class Wedges
{
    public static void Add(StairPlan plan, IReadOnlyCollection<StringBoard> boards, List<Part> parts, List<Joint> joints)
    {
        var (treads, risers) = (new ShapeMarks("TW"), new ShapeMarks("RW"));
        foreach (var board in boards)
        {
            foreach (var housing in board.Housings.Where(h => !ReferenceEquals(h.Seat, h.Shape)))
            {
                var next = housing.IsRiser ? null : board.Housings.FirstOrDefault(h => h.IsRiser && h.Step == housing.Step + 1 && !ReferenceEquals(h.Seat, h.Shape));
                if ((housing.IsRiser ? Riser(housing) : Tread(plan, housing, next?.Seat.Bounds.MaxX)) is not { } outline) continue;
                var wedge = Piece(plan, board, housing, outline, housing.IsRiser ? risers : treads);
                parts.Add(wedge);
                joints.Add(new($"{wedge.Id}/{board.Site.Id}", JointKind.WedgeDriven, wedge.Id, board.Site.Id, wedge.FaceSide.Thickness));
            }
        }
    }

    /// <summary>Below the tread: between its underside and the slope of the housing, as far as the riser's back.</summary>
    private static Path2? Tread(StairPlan plan, StringHousing housing, double? trim)
    {
        var under = housing.Step * plan.Rise - plan.Job.Practice.Tread;
        var slope = housing.Shape.Vertices.Select(v => v.At).Where(p => p.Y < under - Tolerance.Joint).OrderBy(p => p.X).ToList();
        if (slope.Count != 2) return null;
        var (thin, thick) = (slope[0], slope[1]);
        if (trim is { } at && at < thick.X)
        {
            if (at <= thin.X + 1) return null;
            thick = thin.Towards(thick, (at - thin.X) / (thick.X - thin.X));
        }
        return Path2.Polygon(thin, thick, new(thick.X, under), new(thin.X, under));
    }

    /// <summary>Behind the riser: between its back and the slope of the housing.</summary>
    private static Path2? Riser(StringHousing housing)
    {
        var slope = housing.Shape.Vertices.Select(v => v.At).Where(p => p.X > housing.Seat.Bounds.MaxX + Tolerance.Joint).OrderBy(p => p.Y).ToList();
        if (slope.Count != 2) return null;
        var back = housing.Seat.Bounds.MaxX;
        return Path2.Polygon(new(back, slope[0].Y), slope[0], slope[1], new(back, slope[1].Y));
    }

    /// <summary>
    /// What a wedge stays clear of the string's face. None where a slanting riser's back reaches furthest along the string at that very face: a square wedge further in would not touch it.
    /// </summary>
    private static double Clear(StairPlan plan, StringBoard board, StringHousing housing)
    {
        var usual = plan.Job.SmallParts!.WedgeClear;
        if (!housing.IsRiser) return usual;
        var (frame, riser) = (board.Part.FaceSide.Frame, plan.Riser(housing.Step));
        var behind = plan.Job.Practice.Riser * riser.Up;
        var (a, b) = (In(riser.Inner + behind), In(riser.Outer + behind));
        if (Math.Abs(a.W - b.W) < Tolerance.Same) return usual;
        var slant = (b.S - a.S) / (b.W - a.W);
        // Ends that are thinned or cut by a corner are bounded by something else than the back.
        var isBack = Math.Abs(a.S - slant * a.W - housing.Seat.Bounds.MaxX) < Tolerance.Joint;
        return isBack && slant * usual > Tolerance.Joint ? 0 : usual;

        (double S, double W) In(Point2 p)
        {
            var local = frame.ToLocal(new(p.X, p.Y, frame.Origin.Z));
            return (board.Site.Inner ? local.Face.X : -local.Face.X, local.W);
        }
    }

    private static Part Piece(StairPlan plan, StringBoard board, StringHousing housing, Path2 outline, ShapeMarks marks)
    {
        var (frame, small) = (board.Part.FaceSide.Frame, plan.Job.SmallParts!);
        var face = board.Site.Inner ? outline : outline.Mirrored();
        var clear = Clear(plan, board, housing);
        var (wide, box) = (housing.Depth - clear, face.Bounds);
        // Home on the bottom of the housing: what is clear is at the string's face.
        var own = new Frame3(frame.ToWorld(Point2.Origin, -clear), frame.U, frame.V);
        var blank = housing.IsRiser ? new Blank(box.Height, box.Width, wide, new(box.MaxX, box.MinY), new(0, 1), []) : Blank.Around(box, wide);
        var name = housing.IsRiser ? "riser" : "tread";
        return new()
        {
            Id = $"wedge-{name}-{Number.Print(housing.Step, 0)}-{board.Site.Id}", Name = $"wedge of {name} {Number.Print(housing.Step, 0)} in {board.Site.Name}", Mark = marks.Of(face, blank), Kind = PartKind.Wedge, Step = housing.Step,
            Material = small.Timber, Blank = blank, Faces = [new("face side", own, face, wide)],
        };
    }
}
