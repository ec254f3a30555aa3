using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Rod.Views;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The plan behind a dimension: walls, strings, newels, risers, nosings, walking line, and the steps spoken of tinted.</summary>
internal static class PlanGround
{
    private const double WallDepth = 3;
    private const double LeastNosing = 0.9; // nearer than this to its riser a nosing would run into it, mm of paper

    public static void Draw(Sketch sketch, PlanView view, params IEnumerable<int> steps)
    {
        var (plan, place) = (view.Stair.Plan, sketch.Place);
        foreach (var step in steps) sketch.Draw(new FillMark([place.Map(BoundaryWalk.Step(plan, step))], 0.1, Layer.Tint));
        foreach (var wall in view.Walls)
        {
            foreach (var mark in WallBand.Draw(place.Map(wall), WallDepth, 60)) sketch.Draw(mark);
        }
        if (place.Map(view.Stair.Job.Practice.Nosing) >= LeastNosing)
        {
            foreach (var (_, line) in view.Nosings) sketch.Draw(line, PicturePens.Nosing, Layer.Nosing);
        }
        foreach (var riser in plan.RiserLines) sketch.Draw(plan.FaceOf(riser), PicturePens.Riser, Layer.Visible);
        sketch.Draw(plan.WalkingLine, PicturePens.Walking, Layer.Centre);
        foreach (var (_, outline) in view.Strings) Piece(outline, PicturePens.Edge);
        foreach (var (_, outline) in view.Newels) Piece(outline, PicturePens.Newel);

        void Piece(Path2 outline, Pen pen)
        {
            sketch.Draw(new FillMark([place.Map(outline)], 0, Layer.Visible));
            sketch.Draw(outline, pen, Layer.Visible);
        }
    }
}
