using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Regulations;
using System.Collections.Immutable;

namespace Rodwright.Stairs.Plans;

/// <summary>What cannot exist in plan, and what would free it.</summary>
internal static class PlanRoom
{
    public static ImmutableArray<Finding> Check(Job job, double clear, double inset, double innerThickness)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var needed = job.Practice.Newel / 2 - innerThickness / 2 + job.Practice.Cover;
        if (clear <= needed)
        {
            findings.Add(new("RW2001", Severity.Error, "width",
                $"{Number.Print(job.Width)} over the strings leaves {Number.Print(clear)} clear between them; beside a newel of {Number.Print(job.Practice.Newel)} more than {Number.Print(needed)} is needed",
                $"make the stair at least {Number.Print(Math.Ceiling(job.Width - clear + needed + 1))} wide"));
        }
        else if (inset >= clear || inset + innerThickness / 2 <= job.Practice.Newel / 2)
        {
            findings.Add(new("RW2002", Severity.Error, "width",
                $"the regulation's walking line, {Number.Print(inset)} from the inner string, does not lie between the newel's face and the wall in a clear width of {Number.Print(clear)}",
                "a wider stair, a smaller newel, or a regulation that measures in the middle"));
        }
        return findings.ToImmutable();
    }

    /// <summary>The findings with what would free those asked for, tried: afterwards there is a plan.</summary>
    public static ImmutableArray<Finding> Advised(Job job, Regulation regulation, ImmutableArray<Finding> findings, Telling telling) =>
        [.. findings.Select(f => telling.Remedies(f.Code) ? f with { Remedies = Trial.Freeing(job, regulation, f.Code, Candidates(job, f.Code)) } : f)];

    /// <summary>The least change of each kind first.</summary>
    private static IEnumerable<Way> Candidates(Job job, string code)
    {
        var (layout, newel) = (job.Layout, job.Practice.Newel);
        var smaller = Enumerable.Range(1, 20).Select(i => Remedied.Newel(Math.Floor(newel) - 5 * i)).Where(_ => job.HasNewels);
        var wider = Enumerable.Range(1, 60).Select(i => Remedied.Width(Math.Ceiling(job.Width) + 10 * i));
        var moved = Enumerable.Range(1, 20).SelectMany(i => new[] { Remedied.TurnMoved(job, i), Remedied.TurnMoved(job, -i) });
        var more = Enumerable.Range(1, 3).Select(i => Remedied.Risers(job, layout.Risers + i));
        var onNewel = Math.Max(0, Math.Floor(newel / 2 - job.Practice.Cover));
        var onTheNewel = layout.Turn is { } turn && (turn.FirstRiser ?? turn.LastRiser) is not null
            ? Remedied.TurnRisers(job, Math.Min(turn.FirstRiser ?? onNewel, onNewel), Math.Min(turn.LastRiser ?? onNewel, onNewel))
            : null;
        return code switch
        {
            "RW2001" or "RW2002" => [Way.Of(wider), Way.Of(smaller)],
            "RW2003" => [Way.Of(moved), Way.Of(more), Way.Of(smaller)],
            _ => [Way.Of(onTheNewel), Way.Of(moved)],
        };
    }

    /// <summary>Newels that leave no string between them, and risers past a newel with no string to carry them.</summary>
    public static ImmutableArray<Finding> CheckNewels(PlanShape shape)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var (h, going) = (shape.HalfNewel, shape.Job.Going);
        var open = shape.Job.InnerSide == SideKind.Open;
        if (!shape.HasTurn)
        {
            Between("layout.sequence", shape.LastFace, shape.Before, open || shape.Job.OuterSide == SideKind.Open);
            return findings.ToImmutable();
        }
        if (shape.Before > 0) Between("layout.sequence[0].flight", shape.Before * going + shape.FirstRiser, shape.Before, open);
        if (shape.After > 0) Between("layout.sequence", shape.After * going + shape.LastRiser, shape.After, open);
        if (shape.Before == 0 && shape.FirstRiser > h) Past("firstRiser", shape.FirstRiser, "before");
        if (shape.After == 0 && shape.LastRiser > h) Past("lastRiser", shape.LastRiser, "after");
        return findings.ToImmutable();

        void Between(string where, double centres, int goings, bool newelBothEnds)
        {
            var free = centres - (newelBothEnds ? 2 * h : h);
            if (!newelBothEnds || free >= shape.Job.Practice.Newel / 4) return;
            findings.Add(new("RW2003", Severity.Error, where,
                $"{goings} going{(goings == 1 ? "" : "s")} leave {Number.Print(free)} of string between two newels of {Number.Print(2 * h)}; at least {Number.Print(shape.Job.Practice.Newel / 4)} is needed for its shoulders",
                "one more going in this flight, a smaller newel, or none: let the flight begin with the turn"));
        }

        void Past(string field, double e, string side) => findings.Add(new("RW2004", Severity.Error, "layout.sequence.turn." + field,
            $"a riser {Number.Print(e)} outside the newel's centre lies past the newel, but there is no flight {side} the turn whose string could carry it",
            $"keep it within {Number.Print(h - shape.Job.Practice.Cover)}, or add a going {side} the turn"));
    }
}
