using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Words on a plan: riser numbers, goings on the walking line, marks of strings and newels.</summary>
public static class PlanLabels
{
    private const double Beyond = 200; // a string so near behind another might be taken for it, mm

    /// <summary>The lettering.</summary>
    /// <param name="view">What is drawn.</param>
    /// <param name="place">Where.</param>
    /// <param name="lettering">Heights.</param>
    /// <param name="drawn">Lines and figures already there.</param>
    /// <param name="room">Where labels may go.</param>
    public static IReadOnlyList<Mark> Draw(PlanView view, Placement place, SheetLettering lettering, IReadOnlyList<Mark> drawn, Box2 room)
    {
        var plan = view.Stair.Plan;
        var marks = new List<Mark>();
        marks.AddRange(RiserNumbers(view, place, lettering));
        var placer = new LabelPlacer(room);
        placer.Avoid(drawn);
        foreach (var strip in PlanFigures.Strips(view, place, room)) placer.Avoid(strip);
        placer.Avoid(marks);
        foreach (var going in Goings(view, place, lettering.Words))
        {
            // Goings of tapered steps are in the table too; at small scales they give way to riser numbers.
            var box = going.Bounds;
            if (marks.Exists(m => m.Bounds.Overlaps(box))) continue;
            marks.Add(going);
            placer.Avoid(going);
        }
        Say("up", place.Map(plan.Riser(1).Walking) - new Vector2(0, 1), lettering.Figures, 1.5, null, ThingId.WalkingLine);
        foreach (var (part, _) in view.Strings)
        {
            // No string goes without its mark: where steps are narrow, beside a wider one, or smaller.
            var places = Beside(view, part).Select(place.Map).ToList();
            foreach (var size in (double[])[lettering.Figures, lettering.Words])
                if (places.Exists(p => Say(part.Mark, p, size, 1, part))) break;
        }
        foreach (var (part, outline) in view.Newels)
        {
            // A half newel is as thick as its half; the larger side first.
            var (side, thick) = (Math.Max(outline.Bounds.Width, outline.Bounds.Height), Math.Min(outline.Bounds.Width, outline.Bounds.Height));
            var (centre, gap) = (place.Map(outline.Bounds.Centre), 1.2 + place.Map(outline.Bounds.Width / 2));
            if (!Say($"{part.Mark} {plan.Units.Print(side)} × {plan.Units.Print(thick)}", centre, lettering.Words, gap, part)) Say(part.Mark, centre, lettering.Words, gap, part);
        }
        return marks;

        bool Say(string words, Point2 near, double size, double gap, Part? part, string? of = null)
        {
            if (placer.Place(words, near, size, gap: gap, bold: part is { Kind: not PartKind.Newel }, of: part?.Id ?? of) is not { } label) return false;
            marks.AddRange(label.Marks);
            return true;
        }
    }

    /// <summary>The number of each riser beside it, on its step; at small scales only as many as go without touching, the ends of the stair first.</summary>
    private static IEnumerable<TextMark> RiserNumbers(PlanView view, Placement place, SheetLettering lettering)
    {
        var plan = view.Stair.Plan;
        var height = Math.Min(lettering.Figures, 0.5 * place.Map(plan.Going) - 1.2);
        if (height < 1.8) height = lettering.Words;
        var taken = new List<Box2>();
        foreach (var riser in plan.RiserLines.OrderBy(r => r.Number == 1 || r.Number == plan.Risers ? 0 : r.Number % 5 == 0 ? 1 : 2))
        {
            var text = Number.Print(riser.Number, 0);
            var half = Math.Abs(riser.Up.X) * Lettering.Width(text, height) / 2 + Math.Abs(riser.Up.Y) * height / 2;
            var free = place.Map(plan.Going) - 2 * half;
            // Where a number does not go between two risers, only the ends and every fifth are numbered.
            if (free < 0.6 && riser.Number != 1 && riser.Number != plan.Risers && riser.Number % 5 != 0 && plan.Steps[riser.Number - 1] is not StepKind.Tapered) continue;
            var width = place.Map(riser.Outer.DistanceTo(riser.Inner));
            var wide = TurnPlaces.Wide(plan, riser);
            var usual = Math.Clamp((3 * lettering.Figures + 4) / width, 0.2, 0.34);
            // Where one flight passes over another, beside the lines of the other if it can be.
            foreach (var along in new[] { usual, 0.5, 0.7, 0.14 })
            {
                var at = place.Map(wide.Towards(wide == riser.Outer ? riser.Inner : riser.Outer, along)) + (half + Math.Clamp(free / 2, 0.4, 1.3)) * riser.Up;
                var mark = new TextMark(at, text, height, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, of: ThingId.Riser(riser.Number));
                var box = mark.Bounds;
                if (taken.Exists(t => t.Overlaps(box)) || IsCrossed(box, riser.Number)) continue;
                taken.Add(box);
                yield return mark;
                break;
            }
        }

        bool IsCrossed(Box2 box, int number)
        {
            var room = box.Grown(0.3);
            return plan.RiserLines.Any(r => Math.Abs(r.Number - number) > 1 && Cuts(room, place.Map(r.Inner), place.Map(r.Outer)))
                || view.Nosings.Any(n => Math.Abs(n.Riser - number) > 1 && Cuts(room, place.Map(n.Line.Vertices[0].At), place.Map(n.Line.Vertices[^1].At)))
                || view.Strings.Concat(view.Newels).Any(o => Enumerable.Range(0, o.Outline.EdgeCount).Any(i => Cuts(room, place.Map(o.Outline.Edge(i).From), place.Map(o.Outline.Edge(i).To))));
        }

        static bool Cuts(Box2 box, Point2 a, Point2 b)
        {
            var steps = 1 + (int)(a.DistanceTo(b) / 0.4);
            if (!Box2.Of([a, b]).Grown(0.01).Overlaps(box)) return false;
            return Enumerable.Range(0, steps + 1).Any(i => a.Towards(b, (double)i / steps) is var p && p.X > box.MinX && p.X < box.MaxX && p.Y > box.MinY && p.Y < box.MaxY);
        }
    }

    /// <summary>
    /// Points on a string's face halfway between two risers, one near its middle first, then from the widest step on. Of a string that stands free on its back, where no step is
    /// in the way; on its face after all where another string stands behind it, whose mark its own would be taken for.
    /// </summary>
    private static IEnumerable<Point2> Beside(PlanView view, Part part)
    {
        var board = view.Stair.Kit.Strings.First(b => b.Part.Id == part.Id);
        var stations = board.PitchPoints.Select(p => p.At.X).Where(s => s > board.Outline.Bounds.MinX && s < board.Outline.Bounds.MaxX).ToList();
        if (stations.Count < 2) return [On(board.Outline.Bounds.Centre.X)];
        var steps = Enumerable.Range(0, stations.Count - 1).ToList();
        return steps.OrderBy(i => i == (stations.Count - 1) / 2 ? 0 : 1).ThenByDescending(i => Math.Abs(stations[i + 1] - stations[i])).Select(i => On((stations[i] + stations[i + 1]) / 2));

        Point2 On(double s)
        {
            var (frame, face) = (part.FaceSide.Frame, board.Site.Face.At(s));
            if (part.Kind != PartKind.NewelString) return face;
            var back = face - part.FaceSide.Thickness * new Vector2(frame.W.X, frame.W.Y);
            return view.Strings.Any(o => o.Part.Id != part.Id && Math.Abs(o.Part.FaceSide.Frame.U.Dot(frame.U)) > 0.9 && o.Outline.Bounds.Grown(Beyond).Holds(Box2.Empty.With(back))) ? face : back;
        }
    }

    /// <summary>Goings of the tapered steps, and of one straight step of each flight, outside the walking line, where there is more room.</summary>
    private static IEnumerable<TextMark> Goings(PlanView view, Placement place, double height)
    {
        var plan = view.Stair.Plan;
        var tapered = plan.TaperedSteps.ToDictionary(s => s.Number);
        var said = false;
        for (var k = 1; k < plan.Risers; k++)
        {
            if (plan.Steps[k - 1] is StepKind.Landing) { said = false; continue; }
            var isTapered = tapered.TryGetValue(k, out var step);
            if (!isTapered && said) continue;
            said = !isTapered;
            var (a, b) = (plan.Riser(k), plan.Riser(k + 1));
            var going = isTapered ? step!.GoingChord : plan.Going;
            var along = (b.Walking - a.Walking).Unit;
            var toOuter = (TurnPlaces.Wide(plan, a).Towards(TurnPlaces.Wide(plan, b), 0.5) - a.Walking.Towards(b.Walking, 0.5)).Unit;
            var across = along.Left.Dot(toOuter) > 0 ? along.Left : along.Right;
            // The line bulges outwards past its chord.
            var bulge = isTapered ? going * going / (8 * (plan.TurnOf(k)?.WalkingRadius ?? plan.WalkingRadius)) : 0;
            var text = new TextMark(place.Map(a.Walking.Towards(b.Walking, 0.5)) + (height / 2 + 1.2 + place.Map(bulge)) * across, plan.Units.Print(going), height, Layer.Dimension,
                HorizontalAnchor.Middle, VerticalAnchor.Middle, Reading.TurnOf(along), of: ThingId.Going(k));
            if (text.Width < place.Map(going - view.Stair.Job.Practice.Nosing) - 0.6) yield return text;
        }
    }
}
