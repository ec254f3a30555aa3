using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>Makes treads and nosing pieces: level boards whose face side is the top.</summary>
internal static class TreadMaker
{
    /// <summary>The tread of a carried step.</summary>
    public static Part Tread(StairPlan plan, StepSections sections)
    {
        var k = sections.Step;
        var tapered = plan.Steps[k - 1] == StepKind.Tapered;
        return Level(plan, sections, $"tread-{k}", $"tread {k}", $"T{k}", tapered ? PartKind.TaperedTread : PartKind.Tread);
    }

    /// <summary>The nosing piece of a landing or of the upper floor.</summary>
    public static Part NosingPiece(StairPlan plan, StepSections sections)
    {
        var k = sections.Step;
        var name = plan.Steps[k - 1] == StepKind.Floor ? "nosing piece, upper floor" : "nosing piece, landing";
        return Level(plan, sections, $"nosing-{k}", name, $"P{k}", PartKind.NosingPiece);
    }

    private static Part Level(StairPlan plan, StepSections sections, string id, string name, string mark, PartKind kind)
    {
        var practice = plan.Job.Practice;
        var outline = StepOutline.OfTread(sections, practice);
        // Datum edges: the nosing line, and a line square to it through the inner end of the nosing on the face of what carries it.
        var origin = sections.Front.Cross(new(Datum(sections), sections.Up)) ?? sections.Front.Through;
        var frame = new Frame3(new(origin.X, origin.Y, sections.Step * plan.Rise), Vector3.Level(sections.Front.Along), Vector3.Level(sections.Up));
        var local = outline.Moved(p => frame.ToLocal(new(p.X, p.Y, 0)).Face);
        var box = local.Bounds;
        var radius = NosingRadius(practice);
        return new()
        {
            Id = id, Name = name, Mark = mark, Kind = kind, Material = practice.Timber, Step = sections.Step,
            Blank = Blank.Around(box, practice.Tread),
            Faces = [new("face side (top)", frame, local, practice.Tread)],
            Cuts = [new("nosing", CutKind.RoundedEdge, 0, Nosing(sections, practice, frame, box), radius)],
        };
    }

    /// <summary>The line of the nosing from the inner end to the outer one, round a rounded end as far as the return is let into the newel.</summary>
    private static Path2 Nosing(StepSections sections, Practice practice, Frame3 frame, Box2 box)
    {
        var (inner, outer) = (Round(sections.InnerEnd), Round(sections.OuterEnd));
        Vertex2[] from = inner is null ? [new(new(box.MinX, 0))] : [.. inner.Vertices];
        Vertex2[] to = outer is null ? [new(new(box.MaxX, 0))] : [.. outer.Reversed().Vertices];
        return new([.. from, .. to], false);

        Path2? Round(RoundedEnd? end) => end?.Line(practice.Nosing, practice.NewelHousing).Moved(p => frame.ToLocal(new(p.X, p.Y, 0)).Face);
    }

    /// <summary>Radius of the rounded nosing: half the tread's thickness, a full round.</summary>
    public static double NosingRadius(Practice practice) => practice.Tread / 2;

    private static Point2 Datum(StepSections sections)
    {
        var first = sections.Inner[0];
        return first.Edge.From + first.From * first.Edge.Along;
    }
}
