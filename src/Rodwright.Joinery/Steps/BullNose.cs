using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>
/// What a rounded bottom step is made of besides its tread: the first riser, thinned to a veneer and bent round the end; the block it is glued to; the folding wedges between the block and the riser's
/// full thickness that draw it tight (trade-practice.md 4c). In plan every one of them is read from the line of the end.
/// </summary>
internal static class BullNose
{
    private static readonly Vector2 Up = new(0, 1);

    /// <summary>The riser, the blocks and the wedges.</summary>
    /// <param name="plan">A left-hand plan with a rounded end.</param>
    /// <param name="riser">The first riser's sections.</param>
    /// <param name="reaches">Takes how far its square end enters its string, by joint.</param>
    public static IEnumerable<Part> Make(StairPlan plan, StepSections riser, IDictionary<string, double> reaches)
    {
        yield return Riser(plan, riser, reaches);
        foreach (var end in plan.RoundedEnds)
        {
            yield return Level(plan, end, "block", "block of the bottom step", "B", PartKind.Block, BlockOf(plan, end));
            yield return Level(plan, end, "wedges", "folding wedges, a pair", "V", PartKind.Wedges, SlotOf(plan, end));
        }
    }

    /// <summary>Where the riser has its full thickness again.</summary>
    private static Point2 Shoulder(StairPlan plan, RoundedEnd end) => end.Spring - plan.Job.BottomStep.Thinned * end.Out;

    private static Path2 BlockOf(StairPlan plan, RoundedEnd end)
    {
        var (step, thick) = (plan.Job.BottomStep, plan.Job.Practice.Riser);
        var bend = end.Line(-step.Veneer);
        var shoulder = Shoulder(plan, end);
        var slot = shoulder + step.Wedges * end.Out;
        var lap = shoulder - step.Lap * end.Out;
        List<Vertex2> outline = [.. bend.Vertices, new(slot + step.Veneer * Up), new(slot + thick * Up), new(lap + thick * Up), new(lap + end.Back * Up)];
        return Anticlockwise(new(outline, true));
    }

    private static Path2 SlotOf(StairPlan plan, RoundedEnd end)
    {
        var shoulder = Shoulder(plan, end);
        var slot = shoulder + plan.Job.BottomStep.Wedges * end.Out;
        return Anticlockwise(Path2.Polygon(slot + plan.Job.BottomStep.Veneer * Up, shoulder + plan.Job.BottomStep.Veneer * Up, shoulder + plan.Job.Practice.Riser * Up, slot + plan.Job.Practice.Riser * Up));
    }

    /// <summary>
    /// The first riser as it stands: a board at its square end, thinned from the shoulder on and bent. The board before it is bent is as long as the middle of the veneer, which neither stretches nor is crushed.
    /// </summary>
    private static Part Riser(StairPlan plan, StepSections riser, IDictionary<string, double> reaches)
    {
        var practice = plan.Job.Practice;
        // Anticlockwise: the outer end from face to back, the inner end from back to face.
        List<Vertex2> outline = [.. riser.OuterEnd is { } outer ? Bent(plan, outer) : Square(inner: false)];
        outline.AddRange(riser.InnerEnd is { } inner ? new Path2(Bent(plan, inner), false).Reversed().Vertices : Square(inner: true).Reverse());
        var shape = new Path2(outline, true);
        var (_, top) = RiserMaker.Heights(plan, 1);
        var (low, high) = (riser.InnerEnd?.Spring.X ?? shape.Bounds.MinX, riser.OuterEnd?.Spring.X ?? shape.Bounds.MaxX);
        var length = high - low + plan.RoundedEnds.Sum(e => e.Development(-plan.Job.BottomStep.Veneer / 2));
        var frame = new Frame3(new(low, 0, top), Vector3.Level(riser.Front.Along), Vector3.Level(riser.Up));
        return new()
        {
            Id = "riser-1", Name = "riser 1", Mark = "R1", Step = 1, Kind = PartKind.BentRiser,
            // Sheet material cannot be thinned to a veneer.
            Material = practice.Timber,
            Blank = new(length, top, practice.Riser, Point2.Origin, new(1, 0), []),
            Faces = [new("top edge", frame, shape.Moved(p => frame.ToLocal(new(p.X, p.Y, 0)).Face), top)],
        };

        IEnumerable<Vertex2> Square(bool inner)
        {
            var sections = inner ? riser.Inner : riser.Outer;
            var end = RiserOutline.EndAt(riser, sections, practice, inner);
            reaches[$"riser-1/{sections[0].Edge.Carrier}"] = end.Reach;
            return end.Points.Select(p => new Vertex2(p));
        }
    }

    /// <summary>The bent end of the riser from its face at the spring round to its back at the shoulder.</summary>
    private static IEnumerable<Vertex2> Bent(StairPlan plan, RoundedEnd end)
    {
        var (step, thick) = (plan.Job.BottomStep, plan.Job.Practice.Riser);
        var shoulder = Shoulder(plan, end);
        return [.. end.Line(0).Reversed().Vertices, .. end.Line(-step.Veneer).Vertices, new(shoulder + step.Veneer * Up), new(shoulder + thick * Up)];
    }

    private static Part Level(StairPlan plan, RoundedEnd end, string id, string name, string mark, PartKind kind, Path2 outline)
    {
        var practice = plan.Job.Practice;
        var both = plan.RoundedEnds.Length > 1;
        var top = plan.Rise - practice.Tread;
        var frame = new Frame3(new(end.Spring.X, end.Spring.Y, top), Vector3.Level(new Vector2(1, 0)), Vector3.Level(Up));
        var local = outline.Moved(p => frame.ToLocal(new(p.X, p.Y, 0)).Face);
        return new()
        {
            Id = id + "-1" + (end.Inner ? "" : "-outer"), Name = name + (both ? end.Inner ? ", inner side" : ", outer side" : ""), Mark = mark + (end.Inner || !both ? "1" : "2"),
            Step = 1, Kind = kind, Material = practice.Timber, Blank = Blank.Around(local.Bounds, top), Faces = [new("top", frame, local, top)],
        };
    }

    private static Path2 Anticlockwise(Path2 path) => path.Area >= 0 ? path : path.Reversed();
}
