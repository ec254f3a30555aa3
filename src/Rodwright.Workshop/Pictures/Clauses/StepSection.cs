using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The steps cut along the walking line and laid out straight, climbing to the right: x along the walking line from the first riser's face, y up from the lower floor, mm.</summary>
internal sealed class StepSection
{
    private readonly StairPlan plan;
    private readonly double[] faces;

    public StepSection(StairPlan plan)
    {
        this.plan = plan;
        faces = new double[plan.Risers + 1];
        for (var k = 1; k < plan.Risers; k++) faces[k + 1] = faces[k] + Places.Going(plan, k);
    }

    /// <summary>The face of a riser at the height of a step's top; step 0 is the lower floor.</summary>
    public Point2 Face(int riser, int step) => new(faces[riser], Level(step));

    /// <summary>The front of a step's nosing, at its top.</summary>
    public Point2 Nosing(int step) => new(faces[step] - plan.Job.Practice.Nosing, Level(step));

    public double Level(int step) => step * plan.Rise;

    /// <summary>Draws the steps as one line, for pictures too small to show their boards.</summary>
    public void Outline(Sketch sketch)
    {
        var far = 2 * plan.Going + 10000;
        var points = new List<Point2> { new(-far, 0) };
        for (var k = 1; k <= plan.Risers; k++) points.AddRange([Face(k, k - 1), Face(k, k)]);
        points.Add(points[^1] + new Vector2(far, 0));
        var deep = new Vector2(0, -(Level(plan.Risers) + far));
        sketch.Draw(new FillMark([sketch.Place.Map(Path2.Polygon([.. points, points[^1] + deep, points[0] + deep]))], 0.1, Layer.Tint));
        sketch.Draw(Path2.Polyline(points), PicturePens.Edge, Layer.Visible);
    }

    /// <summary>Draws every step: the boards cut through, the floors at both ends.</summary>
    public void Draw(Sketch sketch)
    {
        var practice = plan.Job.Practice;
        var far = 2 * plan.Going + 1000;
        for (var k = 1; k <= plan.Risers; k++)
        {
            Board(Path2.Rectangle(faces[k], Level(k - 1) - (practice.RiserOnTread ? 0 : practice.Tread), faces[k] + practice.Riser, Level(k) - practice.Tread));
            var end = k == plan.Risers ? faces[k] + far : faces[k + 1] + (practice.RiserOnTread ? practice.Riser : 0);
            var (bottom, top, round) = (Level(k) - practice.Tread, Level(k), Math.Min(practice.Tread / 2, end - Nosing(k).X));
            Board(new([new(new(Nosing(k).X + round, top), 1), new(new(Nosing(k).X + round, bottom)), new(new(end, bottom)), new(new(end, top))], true));
        }
        sketch.Draw(Path2.Polyline(new Point2(-far, 0), new Point2(faces[1], 0)), PicturePens.Newel, Layer.Site);

        void Board(Path2 outline)
        {
            sketch.Draw(new FillMark([sketch.Place.Map(outline)], 0.16, Layer.Tint));
            sketch.Draw(outline, PicturePens.Riser, Layer.Visible);
        }
    }
}
