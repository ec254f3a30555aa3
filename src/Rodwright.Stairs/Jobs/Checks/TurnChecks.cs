using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using static Rodwright.Stairs.Jobs.Checks.JobCheck;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>Risers of a turn fixed by hand: their housing must fit on the newel or clear of it (setting-out.md 2.2).</summary>
internal static class TurnChecks
{
    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.TurnRiser, "layout.sequence", ["layout.sequence", "practice.newel", "practice.riser", "practice.cover"], j => Riser(j, "firstRiser", j.Layout.Turn?.FirstRiser)),
        new(JobCodes.TurnRiser, "layout.sequence", ["layout.sequence", "practice.newel", "practice.riser", "practice.cover"], j => Riser(j, "lastRiser", j.Layout.Turn?.LastRiser)),
    ];

    private static Pinch? Riser(Job job, string name, double? e)
    {
        if (e is not { } at) return null;
        var half = job.Practice.Newel / 2;
        var (onNewel, pastNewel) = (half - job.Practice.Cover, half + job.Practice.Riser + job.Practice.Cover);
        return onNewel <= 0 || at <= onNewel || at >= pastNewel ? null : new(
            $"{name} {Mm(at)} puts the riser's housing on the newel's arris: with a newel of {Mm(job.Practice.Newel)} and {Mm(job.Practice.Cover)} cover it may be up to {Mm(onNewel)}, or {Mm(pastNewel)} and more",
            $"give {Mm(onNewel)} or less, or leave {name} out and let it be solved",
            To(Math.Floor(onNewel)), To(null), To(Math.Ceiling(pastNewel)));

        Remedy To(double? value)
        {
            var turn = job.Layout.Turn!;
            var words = value is { } fixedAt ? $"{name} {Mm(fixedAt)}" : $"{name} left open and solved";
            return Remedy.Of(words, Remedied.WithTurn(job, name == "firstRiser" ? turn with { FirstRiser = value } : turn with { LastRiser = value }));
        }
    }
}
