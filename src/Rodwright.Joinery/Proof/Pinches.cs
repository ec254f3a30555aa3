using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// What the proof would find not to go together and nothing else has told: newels in the way of other flights, ends that come into a newel where nothing can be cut for them, ends so short on a string that
/// they cannot be housed. Looked for with the proof's own measures where it can be, so that neither knows better than the other; not where it cannot, so that following a drag stays quick.
/// </summary>
internal static class Pinches
{
    /// <summary>The findings of a left-hand kit.</summary>
    public static IEnumerable<Finding> Of(Kit kit)
    {
        var carriers = kit.Parts.Where(p => p.Kind is PartKind.Newel or PartKind.NewelString or PartKind.WallString).ToList();
        var blocked = InTheWay(kit, carriers).ToList();
        // What runs into a newel that stands in its way does so with its steps too.
        var steps = Steps(kit).ToList();
        return [.. blocked.Select(b => b.Finding), .. AtNewels(kit, steps, blocked.Select(b => b.Newel).ToHashSet()), .. OnStrings(kit, steps).Distinct()];
    }

    private static IEnumerable<Prism> Steps(Kit kit) => kit.Parts
        .Where(p => p.Kind is PartKind.Tread or PartKind.TaperedTread or PartKind.Riser or PartKind.TaperedRiser or PartKind.NosingPiece).Select(Prism.Of);

    /// <summary>A newel where another flight's string, or another newel, has to pass: it stands too near the turn that brings that flight back.</summary>
    private static IEnumerable<(string Newel, Finding Finding)> InTheWay(Kit kit, List<Part> carriers)
    {
        foreach (var newel in carriers.Where(p => p.Kind == PartKind.Newel))
        {
            var met = carriers.Where(p => p != newel && (p.Kind != PartKind.Newel || carriers.IndexOf(p) > carriers.IndexOf(newel)))
                .Select(p => (Part: p, Clash: ClashProof.Bodies(newel, p))).FirstOrDefault(c => c.Clash is not null).Part;
            if (met is null) continue;
            var (low, high) = CarrierHeights.Over(met, ClashProof.RingOf(newel));
            var bottom = newel.FaceSide.Frame.Origin.Z;
            var top = bottom + newel.FaceSide.Outline.Bounds.MaxY;
            yield return (newel.Id, InTheWay(kit, newel, met, Math.Min(high, top) - Math.Max(low, bottom)));
        }
    }

    private static Finding InTheWay(Kit kit, Part newel, Part met, double by)
    {
        var (plan, units) = (kit.Plan, kit.Plan.Units);
        var what = met.Kind == PartKind.Newel ? $"{met.Name} would stand in the same place" : $"{met.Name} ({met.Mark}) passes through it";
        return new("RW4015", Severity.Breach, newel.Name, $"{what}: they share {units.Print(by)} of height",
            "a turn further from it, more goings in the flight between, or a well that takes the flights apart")
        {
            Remedies = [.. PinchRemedies.Turns(plan), .. PinchRemedies.Wells(plan)],
        };
    }

    /// <summary>A tread or riser that comes into a newel beside its housing: half on the newel and half on the string behind it.</summary>
    private static IEnumerable<Finding> AtNewels(Kit kit, List<Prism> steps, HashSet<string> blocked)
    {
        foreach (var newel in kit.Parts.Where(p => p.Kind == PartKind.Newel && !blocked.Contains(p.Id)))
        {
            foreach (var piece in steps)
            {
                var inside = ClashProof.OutsideHousings(piece, newel);
                var housed = kit.Joints.FirstOrDefault(j => j.Male == piece.Part.Id && j.Female == newel.Id && j.Kind is JointKind.TreadHousing or JointKind.RiserHousing);
                if (inside.Count == 0 && (housed is null || HousingProof.Prove(housed, piece, newel).Holds)) continue;
                yield return AtNewel(kit, newel, piece, inside);
                break;
            }
        }
    }

    private static Finding AtNewel(Kit kit, Part newel, Prism piece, IReadOnlyList<Point2> inside)
    {
        var (plan, units) = (kit.Plan, kit.Plan.Units);
        var box = Box2.Of(inside);
        var into = inside.Count == 0 ? "meets its arris" : $"comes {units.Print(Math.Min(box.Width, box.Height))} into it beside its housing";
        return new("RW4016", Severity.Breach, newel.Name, $"{piece.Part.Name} {into}: it would lie half in the newel and half in the string behind it",
            "its riser further on to the newel or further past it: another newel, risers of the turn fixed elsewhere, or the taper shared with more or fewer steps")
        {
            Remedies = TurnBy(plan, newel, piece.Part.Step) is { } turn ? [.. PinchRemedies.Risers(plan, turn), .. PinchRemedies.Shares(plan, turn), .. PinchRemedies.Newels(plan)] : [.. PinchRemedies.Newels(plan)],
        };
    }

    private static TurnPlan? TurnBy(StairPlan plan, Part newel, int step) => plan.TurnAt(newel.Id) ?? plan.TurnOf(step) ?? plan.TurnOf(step - 1);

    /// <summary>Where flights share a turn's taper the outer ends of the steps may become so short, and their risers stand so slanted, that nothing can be housed there.</summary>
    private static IEnumerable<Finding> OnStrings(Kit kit, List<Prism> steps)
    {
        var plan = kit.Plan;
        foreach (var turn in plan.Turns.Where(t => TurnCatalogue.Find(t.Method) is { Shares: true }))
        {
            var own = turn.Steps.Select(s => s.Number).Where(s => s < plan.Risers).ToHashSet();
            var near = steps.Where(p => own.Contains(p.Part.Step) || own.Contains(p.Part.Step - 1)).ToList();
            foreach (var board in kit.Strings)
            {
                var bad = near.Where(p => IsUnhoused(kit, p, board.Part)).Select(p => p.Part.Step).ToHashSet();
                // What is too tight is a step of the turn, also where the board it spoils fails the next one.
                var tight = own.Where(s => bad.Contains(s) || bad.Contains(s + 1) || bad.Contains(s - 1)).Order().ToList();
                if (tight.Exists(s => EndsOn(s, board.Part))) tight.RemoveAll(s => !EndsOn(s, board.Part));
                if (tight.Count > 0) yield return OnString(turn, tight.MinBy(s => Length(s, board.Site.Inner)), board.Site.Inner);
            }
            var crossed = own.Where(s => near.Exists(p => p.Part.Step == s && near.Exists(o => o.Part.Step == s + 1 && ClashProof.Between(p, o) is not null))).Order().ToList();
            if (crossed.Count > 0) yield return OnString(turn, crossed.MinBy(s => Math.Min(Length(s, true), Length(s, false))), crossed.Min(s => Length(s, true)) < crossed.Min(s => Length(s, false)));
        }

        bool EndsOn(int step, Part board) => kit.Joints.Any(j => j.Female == board.Id && j.Kind is JointKind.TreadHousing or JointKind.RiserHousing && kit.Find(j.Male).Step == step);

        Finding OnString(TurnPlan turn, int k, bool inner) => new("RW4017", Severity.Breach, $"step {Number.Print(k, 0)}",
            $"its {(inner ? "inner" : "outer")} end, {plan.Units.Print(Length(k, inner))} long between the risers, meets the face {Number.Print(Math.Max(Slant(k, inner), Slant(k + 1, inner)))}° off square: tread and risers come into one another or past their housings there",
            "the taper shared with other steps, or another method for the turn")
        {
            Remedies = [.. PinchRemedies.Shares(plan, turn), .. PinchRemedies.Methods(plan, turn)],
        };

        double Slant(int riser, bool inner)
        {
            var (line, boundary) = (plan.Riser(riser), inner ? plan.Inner : plan.Outer);
            var edge = boundary.Edges[boundary.EdgesOf(plan.RiserLines.Select(r => inner ? r.Inner : r.Outer))[riser - 1]];
            return Angle.OfPitch(Math.Abs(edge.Along.Dot(line.Line.Along)), Math.Abs(edge.Along.Cross(line.Line.Along))).Degrees;
        }

        double Length(int step, bool inner) => inner ? plan.Riser(step).Inner.DistanceTo(plan.Riser(step + 1).Inner) : plan.Riser(step).Outer.DistanceTo(plan.Riser(step + 1).Outer);
    }

    private static bool IsUnhoused(Kit kit, Prism piece, Part board) => ClashProof.OutsideHousings(piece, board).Count > 0
        || kit.Joints.FirstOrDefault(j => j.Male == piece.Part.Id && j.Female == board.Id && j.Kind is JointKind.TreadHousing or JointKind.RiserHousing) is { } joint && !HousingProof.Prove(joint, piece, board).Holds;
}
