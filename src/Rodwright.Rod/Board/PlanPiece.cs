using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Board;

/// <summary>The stair in plan, its joints shown through the newels and strings, its treads areas to pick.</summary>
internal static class PlanPiece
{
    public static PieceDraft Draw(BoardBench bench)
    {
        var view = new PlanView(bench.Stair);
        var lettering = bench.Lettering;
        return PieceDraft.Draw(
            bench, new(ThingId.Plan, "", "Plan", BoardPieceKind.Plan, [ThingId.Plan]),
            PieceSpace.Of(view.Bounds, PlanFigures.Need(view, lettering), bench.Scale.Factor),
            space => [new(space.Place(bench.Scale))],
            space =>
            {
                var place = space.Place(bench.Scale);
                return [.. Areas(view, place), .. PlanMarks.Draw(view, place, joints: true), .. PlanFigures.Draw(view, place, lettering)];
            },
            (space, drawn) => PlanLabels.Draw(view, space.Place(bench.Scale), lettering, drawn, space.Room));
    }

    private static IEnumerable<Mark> Areas(PlanView view, Placement place)
    {
        var plan = view.Stair.Plan;
        foreach (var part in view.Stair.Kit.Parts.Where(p => p.Kind is PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece).OrderBy(p => p.Step))
        {
            if (plan.Steps[part.Step - 1] is StepKind.Landing && plan.TurnOf(part.Step) is { } turn)
            {
                var (from, to) = (plan.Riser(part.Step), plan.Riser(part.Step + 1));
                Point2[] round =
                [
                    TurnPlaces.Near(plan, turn, from), TurnPlaces.Far(plan, turn, from), .. TurnPlaces.Corners(turn), TurnPlaces.Far(plan, turn, to), TurnPlaces.Near(plan, turn, to),
                ];
                yield return Area(Path2.Polygon(round), ThingId.Level(plan, part.Step));
            }
            yield return Area(Footprint.Of(part), part.Id);
        }

        FillMark Area(Path2 outline, string of) => new([place.Map(outline)], 0, Layer.Hit, of);
    }
}
