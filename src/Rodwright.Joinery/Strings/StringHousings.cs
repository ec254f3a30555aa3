using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Steps;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>Lays the housings of one string out on its development.</summary>
internal static class StringHousings
{
    /// <summary>Where the body of a board begins and ends, for its housings: shoulders, corner, trimmer.</summary>
    public static HousingShapes.Reach ReachOf(StairPlan plan, StringSite site)
    {
        var half = plan.Job.Practice.Newel / 2;
        var from = site.Lower.Kind switch
        {
            StringEndKind.Newel => site.Lower.At + half,
            StringEndKind.CornerLetIn => site.Lower.At,
            _ => double.NegativeInfinity,
        };
        var to = site.Upper.Kind switch
        {
            StringEndKind.Newel => site.Upper.At - half,
            StringEndKind.CornerThrough => site.Upper.At,
            _ => TrimmerAt(plan, site),
        };
        return new(from, to);
    }

    /// <summary>Station of the trimmer's face at a string's head: behind the last riser and the packing.</summary>
    public static double TrimmerAt(StairPlan plan, StringSite site) =>
        site.Upper.At + plan.Job.Practice.Riser + plan.Job.Practice.Packing;

    public static ImmutableArray<StringHousing> Of(StairPlan plan, SectionsOfPlan sections, StringSite site)
    {
        var found = ImmutableArray.CreateBuilder<StringHousing>();
        var reach = ReachOf(plan, site);
        foreach (var (k, tread) in sections.Treads.OrderBy(p => p.Key)) Add(TreadOn(plan, sections, site, reach, tread, Side(tread)), $"tread-{k}", k, false);
        foreach (var (k, nosing) in sections.NosingPieces.OrderBy(p => p.Key)) Add(NosingOn(plan, site, nosing, Side(nosing)), $"nosing-{k}", k, false);
        foreach (var (k, riser) in sections.Risers.OrderBy(p => p.Key)) Add(RiserOn(plan, site, reach, riser, Side(riser)), $"riser-{k}", k, true);
        return found.ToImmutable();

        ImmutableArray<Section> Side(StepSections piece) => site.Inner ? piece.Inner : piece.Outer;

        void Add((HousingShapes.Housing Shape, Point2? Nosing)? housing, string piece, int step, bool isRiser)
        {
            if (housing is { } h) found.Add(new(piece, step, isRiser, h.Shape.Seat, h.Shape.Shape, plan.Job.Practice.Housing, h.Nosing));
        }
    }

    private static (HousingShapes.Housing, Point2?)? TreadOn(
        StairPlan plan, SectionsOfPlan sections, StringSite site, HousingShapes.Reach reach, StepSections tread, ImmutableArray<Section> side)
    {
        if (side.FirstOrDefault(x => x.Edge.Carrier == site.Id) is not { } section) return null;
        var practice = plan.Job.Practice;
        var k = tread.Step;
        var start = site.Face.Station(section.Edge.From);
        var (from, to) = (start + section.From, start + section.To);
        var riserAbove = plan.Riser(k + 1);
        var next = site.Face.Station(site.Inner ? riserAbove.Inner : riserAbove.Outer);
        var thick = practice.Riser / section.BackSine;
        // Nothing can be driven where the wedge would have to come round the corner of the room; the tread is glued and blocked there.
        var canWedge = site.Upper.Kind == StringEndKind.CornerThrough
            ? section.HasBack && next + thick + practice.TreadWedge.RunOn <= reach.To
            : section.HasBack || site.Upper.Kind == StringEndKind.Newel;
        (double, double)? wedge = canWedge
            ? (Math.Max(next - practice.TreadWedge.Length, RiserBack(sections, site, k) ?? reach.From), next + thick + practice.TreadWedge.RunOn)
            : null;
        var top = k * plan.Rise;
        var shape = HousingShapes.Tread(from, to, NosingOf(section, start), top, wedge, reach, practice);
        return (shape, section.HasFront && from >= reach.From ? new Point2(from, top) : null);
    }

    private static HousingShapes.NosingLine? NosingOf(Section section, double start) =>
        double.IsNaN(section.NosingAt) ? null : new(start + section.NosingAt, section.FrontSine);

    private static (HousingShapes.Housing, Point2?)? NosingOn(StairPlan plan, StringSite site, StepSections nosing, ImmutableArray<Section> side)
    {
        if (side.FirstOrDefault(x => x.Edge.Carrier == site.Id) is not { } section) return null;
        var start = site.Face.Station(section.Edge.From);
        var top = nosing.Step * plan.Rise;
        // At a head it passes over the trimmer; at a newel the string's shoulder ends it.
        var reach = site.Upper.Kind == StringEndKind.Newel ? ReachOf(plan, site) : new(double.NegativeInfinity, double.PositiveInfinity);
        var shape = HousingShapes.Tread(start + section.From, start + section.To, NosingOf(section, start), top, null, reach, plan.Job.Practice);
        return (shape, new Point2(start + section.From, top));
    }

    private static (HousingShapes.Housing, Point2?)? RiserOn(
        StairPlan plan, StringSite site, HousingShapes.Reach reach, StepSections riser, ImmutableArray<Section> side)
    {
        if (side[0] is not { } section || section.Edge.Carrier != site.Id || section.Butts) return null;
        var practice = plan.Job.Practice;
        var start = site.Face.Station(section.Edge.From);
        var (bottom, top) = RiserMaker.Heights(plan, riser.Step);
        // On a floor the wedge's space stops there. Behind a riser that stands on its tread it runs on down past that tread's back edge.
        var onFloor = riser.Step == 1 || plan.Steps[riser.Step - 2] == StepKind.Landing;
        var runOn = onFloor ? 0 : practice.RiserWedge.RunOn + (practice.RiserOnTread ? practice.Tread : 0);
        return (HousingShapes.Riser(start + section.From, start + section.To, bottom, top, runOn, true, reach, practice), null);
    }

    /// <summary>Back of riser k on this string, behind which the tread's wedge may begin.</summary>
    private static double? RiserBack(SectionsOfPlan sections, StringSite site, int k)
    {
        var side = site.Inner ? sections.Risers[k].Inner : sections.Risers[k].Outer;
        var section = side[0];
        return section.Edge.Carrier == site.Id ? site.Face.Station(section.Edge.From) + section.To : null;
    }
}
