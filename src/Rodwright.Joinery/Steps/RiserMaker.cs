using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using System.Collections.Immutable;

namespace Rodwright.Joinery.Steps;

/// <summary>Makes risers: upright boards whose face side looks down the stair.</summary>
internal static class RiserMaker
{
    /// <summary>Lower and upper edge of riser k, mm above the lower floor (setting-out.md 4).</summary>
    public static (double Bottom, double Top) Heights(StairPlan plan, int k)
    {
        var practice = plan.Job.Practice;
        var top = k * plan.Rise - practice.Tread;
        if (k == 1) return (0, top);
        // On a landing the riser stands on the floor; elsewhere it stands on the tread below or runs down behind it.
        var standsOnTop = practice.RiserOnTread || plan.Steps[k - 2] == StepKind.Landing;
        return ((k - 1) * plan.Rise - (standsOnTop ? 0 : practice.Tread), top);
    }

    /// <summary>The riser, with findings on ends that come out too thin, and how far each end enters its carrier, by joint.</summary>
    public static Part Make(StairPlan plan, StepSections sections, List<Finding> findings, IDictionary<string, double> reaches)
    {
        var k = sections.Step;
        var practice = plan.Job.Practice;
        var (outline, inner, outer) = RiserOutline.Of(sections, practice);
        var (bottom, top) = Heights(plan, k);
        var start = sections.Front.Through;
        var along = Vector3.Level(sections.Front.Along);
        var face = new Frame3(new(start.X, start.Y, bottom), along, Vector3.Up);
        var edge = new Frame3(new(start.X, start.Y, top), along, Vector3.Level(sections.Up));
        var plan2 = outline.Moved(p => edge.ToLocal(new(p.X, p.Y, 0)).Face);
        var box = plan2.Bounds;
        var slanted = inner.Bevel.Degrees > 1e-6 || outer.Bevel.Degrees > 1e-6;
        reaches[$"riser-{k}/{sections.Inner[0].Edge.Carrier}"] = inner.Reach;
        reaches[$"riser-{k}/{sections.Outer[0].Edge.Carrier}"] = outer.Reach;
        (RiserOutline.End End, string Side, Section Section)[] ends = [(inner, "inner", sections.Inner[0]), (outer, "outer", sections.Outer[0])];
        var thin = ends.Where(e => e.End.Left < practice.RiserEnd - Tolerance.Same).ToList();
        foreach (var (end, side, section) in thin) Report(end, side, StepOutline.DepthInto(section, practice));
        return new()
        {
            Id = $"riser-{k}", Name = $"riser {k}", Mark = $"R{k}", Step = k, Material = practice.RiserMaterial,
            Kind = slanted ? PartKind.TaperedRiser : PartKind.Riser,
            Blank = Blank.Around(new(box.MinX, 0, box.MaxX, top - bottom), practice.Riser),
            Faces =
            [
                new("face side", face, Path2.Rectangle(box.MinX, 0, box.MaxX, top - bottom), practice.Riser),
                new("top edge", edge, plan2, top - bottom),
            ],
        };

        void Report(RiserOutline.End end, string side, double depth)
        {
            var shallower = Shallower(end);
            var left = end.Left > 0
                ? $"{plan.Units.Print(end.Left, 2)} of {plan.Units.Print(practice.Riser)} is left at the full depth of {plan.Units.Print(depth)}"
                : $"it runs out to a point {plan.Units.Print(end.Reach)} in, short of the full depth of {plan.Units.Print(depth)}";
            findings.Add(new("RW4003", Severity.Breach, $"riser {k}",
                $"its {side} end meets the face {Number.Print(end.Bevel.Degrees)}° off square; eased to stay within its housing, {left}; {plan.Units.Print(practice.RiserEnd)} is wanted there",
                (shallower > 0 ? $"a housing {plan.Units.Print(shallower)} deep, or " : "") + $"a riser {plan.Units.Print(Thicker(end, depth))} thick")
            {
                Remedies = Remedies(),
            });
        }

        double Shallower(RiserOutline.End end) => (practice.Riser / end.Bevel.Cosine - practice.RiserEnd) / end.Bevel.Tangent is var deep && plan.Units.IsInches ? plan.Units.Down(deep) : Math.Floor(deep * 10) / 10;

        double Thicker(RiserOutline.End end, double depth) => plan.Units.Up((practice.RiserEnd + depth * end.Bevel.Tangent) * end.Bevel.Cosine);

        // Both ends of one riser are freed together.
        ImmutableArray<Remedy> Remedies()
        {
            var fields = thin.GroupBy(e => e.Section.Edge.Kind == BoundaryKind.NewelFace ? "practice.newelHousing" : "practice.housing")
                .Select(g => (Field: g.Key, Depth: g.Min(e => Shallower(e.End)))).ToList();
            var thick = thin.Max(e => Thicker(e.End, StepOutline.DepthInto(e.Section, practice)));
            var shallow = string.Join(" and ", fields.Select(f => $"housings {plan.Units.Print(f.Depth)} deep in {(f.Field == "practice.housing" ? "strings" : "newels")}"));
            return
            [
                .. fields.TrueForAll(f => f.Depth > 0) ? new[] { new Remedy(shallow, [.. fields.Select(f => FieldChange.To(f.Field, f.Depth))]) } : [],
                Remedy.Of($"risers {plan.Units.Print(thick)} thick", FieldChange.To("practice.riser", thick)),
            ];
        }
    }
}
