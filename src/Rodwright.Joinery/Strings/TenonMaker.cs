using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>Works out the tenons of all strings, shortened where two would meet in one newel or one would break out into a newel's notch.</summary>
internal static class TenonMaker
{
    // Wood between a shoulder and the hole of its peg, mm (common practice).
    private const double LeastBeforePeg = 3;

    public static ImmutableArray<StringTenon> Make(StairPlan plan, IReadOnlyList<(Development Development, StringEdges Edges)> strings, List<Finding> findings)
    {
        var practice = plan.Job.Practice;
        var tenons = new List<StringTenon>();
        foreach (var (development, edges) in strings)
        {
            var site = development.Sites[0];
            if (site.Lower.Kind == StringEndKind.Newel) tenons.Add(At(site, edges, false, practice.Tenon.Part * practice.Newel));
            site = development.Sites[^1];
            if (site.Upper.Kind == StringEndKind.Newel) tenons.Add(At(site, edges, true, practice.Tenon.Part * practice.Newel));
        }
        for (var i = 0; i < tenons.Count; i++)
        {
            var length = Math.Min(Math.Min(BesideOther(tenons[i]), BeforeNotch(tenons[i])), BeforeHousings(tenons[i]));
            if (length >= tenons[i].Length - Tolerance.Same) continue;
            var (development, edges) = strings.First(s => s.Development.Sites.Contains(tenons[i].Site));
            tenons[i] = At(tenons[i].Site, edges, tenons[i].IsUpper, length);
        }
        PegPlaces.Settle(plan, tenons, findings);
        foreach (var tenon in tenons.Where(t => t.Length < practice.Tenon.Least - Tolerance.Same))
        {
            var beside = tenon.Practice.Least + tenon.Practice.Between;
            findings.Add(new("RW4004", Severity.Breach, tenon.Site.Name,
                $"its tenon into the newel is shortened to {plan.Units.Print(tenon.Length)} so that it does not meet the other joints there; {plan.Units.Print(practice.Tenon.Least)} is the least",
                $"a newel of {plan.Units.Print(2 * (beside + tenon.Site.Thickness / 2))}, or strings {plan.Units.Print(Math.Max(0, 2 * (practice.Newel / 2 - beside)))} thick")
            {
                Remedies = [.. TenonRemedies.LargerNewels(plan.Units, practice.Newel), TenonRemedies.Strings(plan.Units, tenon.Site, plan.Units.Down(2 * (practice.Newel / 2 - beside)))],
            });
        }
        foreach (var tenon in tenons)
        {
            var left = tenon.PegBack - tenon.Practice.Draw - tenon.Practice.Peg / 2;
            if (left >= LeastBeforePeg - Tolerance.Same) continue;
            findings.Add(new("RW4007", Severity.Breach, tenon.Site.Name,
                $"the hole for its peg comes within {plan.Units.Print(left)} of the tenon's shoulder; {plan.Units.Print(LeastBeforePeg)} is the least",
                $"a longer tenon (a larger newel or thinner strings), or a peg of {plan.Units.Print(Math.Max(0, 2 * (tenon.PegBack - tenon.Practice.Draw - LeastBeforePeg)))}")
            {
                Remedies = [.. TenonRemedies.SmallerPegs(plan.Units, tenon.Practice.Peg), .. TenonRemedies.LessDraw(plan.Units, tenon.Practice.Draw), .. TenonRemedies.LargerNewels(plan.Units, practice.Newel)],
            });
        }
        return [.. tenons];

        StringTenon At(StringSite site, StringEdges edges, bool isUpper, double length)
        {
            var shoulder = isUpper ? site.Upper.At - practice.Newel / 2 : site.Lower.At + practice.Newel / 2;
            var tip = shoulder + (isUpper ? length : -length);
            // Inside the board over the whole tenon: the lower of the upper edges, the higher of the lower ones, and clear of the floor.
            var top = Math.Min(GraphCut.HeightAt(edges.Upper, shoulder), Produced(edges.Upper, shoulder, tip, isUpper));
            var bottom = Math.Max(GraphCut.HeightAt(edges.Lower, shoulder), Produced(edges.Lower, shoulder, tip, isUpper));
            bottom = Math.Max(bottom, site.Lower.Level + practice.CoverBelow);
            var third = (top - bottom) / 3;
            return new(site, isUpper, isUpper ? site.Upper.Newel : site.Lower.Newel, shoulder, length, bottom, top, GraphCut.HeightAt(edges.Lower, shoulder),
                practice.Tenon.Thickness ?? site.Thickness - practice.Housing, Math.Min(practice.Tenon.Haunch, length / 2),
                Math.Min(practice.Tenon.PegBack, length / 2), [bottom + third / 2, top - third / 2], practice.Tenon);
        }

        // The edge's end piece carried on straight past the shoulder.
        double Produced(Path2 edge, double shoulder, double tip, bool isUpper)
        {
            var (a, b, _) = edge.Edge(isUpper ? edge.EdgeCount - 1 : 0);
            var slope = (b.Y - a.Y) / (b.X - a.X);
            return GraphCut.HeightAt(edge, shoulder) + slope * (tip - shoulder);
        }

        // Two strings square to one another in a turn's newel: the incoming one stops short of the other's mortice.
        double BesideOther(StringTenon t)
        {
            var other = tenons.Find(o => o.Newel == t.Newel && !ReferenceEquals(o, t));
            if (!t.IsUpper || other is null || plan.TurnAt(t.Newel) is { HasStringsSideBySide: true } || other.Bottom > t.Top + 1 || other.Top < t.Bottom - 1) return t.Length;
            // The mortice is deeper than the tenon: at least a millimetre stays between it and the other one.
            var free = t.To(other, practice.Newel) - Math.Max(practice.Tenon.Between, practice.Tenon.MorticeClearance + 1);
            return Math.Min(t.Length, free);
        }

        // A turn's newel has housings in the faces the mortices point at.
        double BeforeHousings(StringTenon t) => plan.Newels.First(n => n.Id == t.Newel).Role != NewelRole.Turn ? t.Length
            : Math.Min(t.Length, practice.Newel - practice.NewelHousing - practice.Tenon.Between - practice.Tenon.MorticeClearance);

        // A top newel is notched over the trimmer; the mortice must not break out into the notch.
        double BeforeNotch(StringTenon t)
        {
            var newel = plan.Newels.First(n => n.Id == t.Newel);
            // Half a newel leaves half the depth.
            if (newel.Split is not null) return Math.Min(t.Length, practice.Newel / 2 - practice.Tenon.Between - practice.Tenon.MorticeClearance);
            if (newel.Role != NewelRole.Top) return t.Length;
            return Math.Min(t.Length, practice.Newel / 2 + practice.Riser + practice.Packing - practice.Tenon.Between - practice.Tenon.MorticeClearance);
        }
    }
}
