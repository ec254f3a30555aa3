using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Board;

/// <summary>A handrail with its base rail, balusters and fillets, or a wall rail with its brackets, seen from the stair as it stands; string and newels faint.</summary>
internal static class RailPiece
{
    private const double Off = 4; // ordinates' line from the drawing, mm of paper
    private const double Beside = 40; // of newels and string past the rails, mm of timber

    public static PieceDraft Draw(BoardBench bench, Part rail)
    {
        var (kit, lettering, frame) = (bench.Stair.Kit, bench.Lettering, rail.FaceSide.Frame);
        var standing = Into(kit, rail.Id);
        var below = standing.SelectMany(p => kit.Joints.Where(j => j.Male == p.Id && j.Kind == JointKind.InGroove && j.Female != rail.Id)).Select(j => kit.Find(j.Female)).FirstOrDefault(p => p.Kind == PartKind.BaseRail);
        List<Part> rails = below is null ? [rail] : [rail, below];
        List<Part> between = [.. standing.Concat(below is null ? [] : Into(kit, below.Id)).DistinctBy(p => p.Id)];
        var box = rails.Concat(between).Aggregate(Box2.Empty, (b, p) => b.With(On(frame, p).Bounds));
        box = box with { MinX = box.MinX - Beside, MaxX = box.MaxX + Beside };
        var faint = kit.Joints.Where(j => rails.Exists(r => r.Id == j.Male) && j.Kind is JointKind.RailTenon or JointKind.RailToNewel or JointKind.RailOnString or JointKind.UnderString).Select(j => kit.Find(j.Female)).DistinctBy(p => p.Id).ToList();
        var climbs = rail.Blank.Grain.Y >= 0;
        var datum = (below ?? rail).FaceSide.Outline.Bounds is var low && climbs ? low.MinX : low.MaxX;
        var sides = between.Where(p => p.Kind is PartKind.Baluster or PartKind.Bracket).Select(p => (Part: p, X: On(frame, p).Bounds is var b && climbs ? b.MinX : b.MaxX)).ToList();
        return PieceDraft.Draw(
            bench, new(rail.Id, string.Join(", ", rails.Select(r => r.Mark)), Sentence.Begin(rail.Name), BoardPieceKind.Balustrade, [.. rails.Select(r => r.Id)]),
            PieceSpace.Of(box, new ViewNeed(0, 0, 3, 3, 3, lettering.OrdinateStrip(6) + Off), bench.Scale.Factor),
            space => [new(space.Place(bench.Scale))],
            space =>
            {
                var place = space.Place(bench.Scale);
                var window = place.Map(box);
                List<DimensionStop> stops = [new(place.Map(new Point2(datum, box.MinY)), 0, Of: (below ?? rail).Id), .. sides.Select(s => new DimensionStop(place.Map(new Point2(s.X, box.MinY)), Math.Abs(s.X - datum), Of: s.Part.Id))];
                return
                [
                    .. rails.Concat(between).Select(p => new FillMark([place.Map(On(frame, p))], 0, Layer.Hit, p.Id)),
                    .. faint.Select(p => new ClipMark(window, [place.Stroke(On(frame, p), Pens.Construction, Layer.Construction, p.Id)])),
                    .. between.Select(p => place.Stroke(On(frame, p), p.Kind == PartKind.Fillet ? Pens.Hidden : Pens.Visible, p.Kind == PartKind.Fillet ? Layer.Hidden : Layer.Visible, p.Id)),
                    .. rails.SelectMany(r => Cuts(r, place, frame)),
                    .. rails.Select(r => place.Stroke(On(frame, r), Pens.Outline, Layer.OutlineToCut, r.Id)),
                    .. RunningDimension.Draw(stops, new(new(0, window.MinY - Off), new(1, 0)), lettering.Dimensions),
                ];
            },
            (_, _) => []);
    }

    /// <summary>What stands in a rail's groove or under it.</summary>
    private static List<Part> Into(Kit kit, string rail) =>
        [.. kit.Joints.Where(j => j.Female == rail && j.Kind is JointKind.InGroove or JointKind.BracketToRail).Select(j => kit.Find(j.Male)).DistinctBy(p => p.Id)];

    /// <summary>The grooves of a rail, hidden.</summary>
    private static IEnumerable<Mark> Cuts(Part rail, Placement place, Frame3 frame) => rail.Cuts.Where(c => c.Kind == CutKind.Groove)
        .Select(c => place.Stroke(c.Shape.Moved(p => frame.ToLocal(rail.Faces[c.Face].Frame.ToWorld(p)).Face), Pens.Hidden, Layer.Hidden, Things.ThingId.Of(rail, c)));

    /// <summary>A piece as seen on the rail's face: of a newel what it covers.</summary>
    private static Path2 On(Frame3 frame, Part part)
    {
        if (!part.Kind.IsPost())
        {
            // Arcs of an eased edge stay arcs; seen from behind they turn the other way.
            return part.FaceSide.Frame.U.Dot(frame.U) > 0 ? part.FaceSide.Outline.Moved(To) : part.FaceSide.Outline.MapMirrored(To);
        }
        var plan = Footprint.Of(part).Flattened().Select(p => frame.ToLocal(new(p.X, p.Y, 0)).Face.X).ToList();
        var box = part.FaceSide.Outline.Bounds;
        var foot = part.FaceSide.Frame.Origin.Z - frame.Origin.Z;
        return Path2.Rectangle(plan.Min(), foot + box.MinY, plan.Max(), foot + box.MaxY);

        Point2 To(Point2 p) => frame.ToLocal(part.FaceSide.Frame.ToWorld(p)).Face;
    }
}
