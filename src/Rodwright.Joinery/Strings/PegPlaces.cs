using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// Settles the pegs of two strings that meet in a turn's newel. Their pegs cross in plan, so they keep apart in height; and a peg that would pass through
/// the other string's mortice is moved nearer its own shoulder or above or below that mortice, within its own tenon.
/// </summary>
internal static class PegPlaces
{
    private const double Clear = 1; // mm of wood between two cuts

    public static void Settle(StairPlan plan, List<StringTenon> tenons, List<Finding> findings)
    {
        for (var i = 0; i < tenons.Count; i++)
        {
            var other = tenons.Find(o => o.Newel == tenons[i].Newel && !ReferenceEquals(o, tenons[i]));
            if (other is not null) tenons[i] = Beside(plan, tenons[i], other, findings);
        }
    }

    private static StringTenon Beside(StairPlan plan, StringTenon tenon, StringTenon other, List<Finding> findings)
    {
        var peg = tenon.Practice.Peg;
        if (other.Bottom > tenon.Top + peg || other.Top < tenon.Bottom - peg) return tenon;
        if (plan.TurnAt(tenon.Newel) is { HasStringsSideBySide: true } turn)
        {
            // Driven from the string's own side: in front of the riser housed there, above or below the treads.
            var free = plan.Job.Practice.Newel / 2 - Math.Max(turn.FirstRiser, turn.LastRiser) - peg / 2 - Clear;
            var treads = new[] { turn.FirstLine - 1, turn.FirstLine, turn.LastLine }
                .Select(k => (k * plan.Rise - plan.Job.Practice.Tread - peg / 2 - Clear, k * plan.Rise + peg / 2 + Clear)).ToList();
            var beside = tenon.Tenons.Select(t => Free((t.Bottom + t.Top) / 2, t.Bottom + peg / 2 + 2, t.Top - peg / 2 - 2, treads)).ToArray();
            return free < peg / 2 + 4 ? tenon : tenon with { PegBack = Math.Min(tenon.PegBack, free), PegHeights = [.. beside.Select((z, i) => z ?? tenon.PegHeights[i])] };
        }
        // Room between the newel's face and the other string's mortice, for the whole peg.
        var room = tenon.To(other, plan.Job.Practice.Newel) - tenon.Practice.Between - peg / 2;
        var nearest = peg / 2 + 4;
        var back = Math.Min(tenon.PegBack, Math.Max(nearest, room));
        var barred = new List<(double From, double To)>();
        if (back > room + tenon.Practice.Between - Clear) barred.Add((other.Bottom - peg / 2 - Clear, other.Top + peg / 2 + Clear));
        // Pegs settled second keep clear of those settled first.
        if (!tenon.IsUpper) barred.AddRange(other.PegHeights.Select(z => (z - peg - Clear, z + peg + Clear)));
        var heights = tenon.Tenons.Select(t => Free((t.Bottom + t.Top) / 2, t.Bottom + peg / 2 + 2, t.Top - peg / 2 - 2, barred)).ToArray();
        if (heights.Contains(null))
        {
            var least = 2 * (nearest + peg / 2 + tenon.Practice.Between + other.Site.Thickness / 2);
            findings.Add(new("RW4006", Severity.Breach, tenon.Site.Name,
                $"a peg of {plan.Units.Print(peg)} through its tenon meets the other string's joint: a newel of {plan.Units.Print(plan.Job.Practice.Newel)} is too small for two strings of {plan.Units.Print(other.Site.Thickness)} there",
                $"a newel of {plan.Units.Print(plan.Units.Up(least))}, thinner strings, or smaller pegs")
            {
                Remedies = [TenonRemedies.Newel(plan.Units, plan.Units.Up(least)), .. TenonRemedies.SmallerPegs(plan.Units, peg)],
            });
        }
        return tenon with { PegBack = back, PegHeights = [.. heights.Select((z, i) => z ?? tenon.PegHeights[i])] };
    }

    /// <summary>The height nearest the wanted one, between two limits, outside the barred stretches; null where there is none.</summary>
    private static double? Free(double wanted, double low, double high, List<(double From, double To)> barred)
    {
        var places = barred.SelectMany(b => new[] { b.From, b.To }).Append(wanted)
            .Where(z => z >= low && z <= high && barred.TrueForAll(b => z <= b.From || z >= b.To));
        return places.OrderBy(z => Math.Abs(z - wanted)).Select(z => (double?)z).FirstOrDefault();
    }
}
