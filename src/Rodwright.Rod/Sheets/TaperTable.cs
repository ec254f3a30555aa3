using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Sheets;

/// <summary>What is measured on the tapered steps: goings, narrow ends in all three measures, wide ends, tapers.</summary>
public static class TaperTable
{
    /// <summary>The table in a lettering height, mm; null for a stair without tapered steps.</summary>
    public static Table? Of(StairPlan plan, double height)
    {
        var steps = plan.TaperedSteps.ToList();
        if (steps.Count == 0) return null;
        var k = height / 2.5;
        var second = steps.Exists(s => s.OuterGoing is not null);
        List<TableColumn> columns =
        [
            Column("Step", 12), Column("Going, chord", 15), Column("Going, arc", 15), Column("Narrow, along faces", 24), Column("Narrow, straight", 17),
            Column("Narrow, tread", 17), Column("Wide end", 15), Column("Taper", 14),
        ];
        if (second) columns.Insert(3, Column("Outer going", 15));
        return new(columns, steps.Select(s => (IReadOnlyList<string>)
        [
            Number.Print(s.Number, 0), Mm(s.GoingChord), Mm(s.GoingArc), .. second ? new[] { s.OuterGoing is { } o ? Mm(o) : "–" } : [],
            Mm(s.NarrowAlongFaces), Mm(s.NarrowStraight), Mm(s.NarrowTreadWidth), Mm(s.Wide), Number.Fixed(Math.Abs(s.Taper.Degrees), 2) + "°",
        ]), height);

        TableColumn Column(string title, double width) => new(title, (plan.Units.IsInches && title != "Step" ? Math.Max(width, 21) : width) * k, HorizontalAnchor.End);

        string Mm(double value) => plan.Units.Fixed(value, 1);
    }

    /// <summary>The table drawn whole into a box, in the largest lettering that lets it fit; what it measures and its width. Nothing where it fits in none.</summary>
    public static (IReadOnlyList<Mark> Marks, double Width) Draw(StairPlan plan, Box2 box, double height)
    {
        foreach (var size in new[] { height, 2.5, 1.8 }.Where(h => h <= height).Distinct())
        {
            if (Of(plan, size) is not { } table || table.Width > box.Width || table.Height > box.Height) continue;
            return (table.Draw(new(box.MinX, box.MaxY), box.Height).Marks, table.Width);
        }
        return ([], 0);
    }
}
