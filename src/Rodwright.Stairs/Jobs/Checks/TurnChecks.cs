using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>Risers of a turn fixed by hand: their housing must fit on the newel or clear of it (setting-out.md 2.2).</summary>
internal static class TurnChecks
{
    private static readonly ImmutableArray<string> Fields = ["layout.sequence", "practice.newel", "practice.riser", "practice.cover"];

    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.TurnRiser, "layout.sequence", Fields, j => Riser(j, "firstRiser", t => t.FirstRiser, (t, v) => t with { FirstRiser = v })),
        new(JobCodes.TurnRiser, "layout.sequence", Fields, j => Riser(j, "lastRiser", t => t.LastRiser, (t, v) => t with { LastRiser = v })),
        new(JobCodes.SharedTaper, "layout.sequence", ["layout.sequence"], SharedTaper),
    ];

    private static Pinch? SharedTaper(Job job) =>
        job.Layout.Sequence.OfType<Turn>().FirstOrDefault(t => t.SharedBefore + t.SharedAfter > 0 && TurnCatalogue.Find(t.Method)?.Shares != true) is { } turn
            ? new($"the turn shares its taper with {turn.SharedBefore} steps before it and {turn.SharedAfter} after it, but {turn.Method} tapers the turn's own steps only",
                $"a balanced method: {string.Join(", ", TurnCatalogue.Winders.Where(m => m.Shares).Select(m => m.Id))}; or leave sharedBefore and sharedAfter out")
            : null;

    private static Pinch? Riser(Job job, string name, Func<Turn, double?> value, Func<Turn, double?, Turn> with)
    {
        var half = job.Practice.Newel / 2;
        var (onNewel, pastNewel) = (half - job.Practice.Cover, half + job.Practice.Riser + job.Practice.Cover);
        var turns = Course.Of(job.Layout).Turns;
        for (var index = 0; index < turns.Length; index++)
        {
            var turn = turns[index];
            if (value(turn) is not { } at || onNewel <= 0 || at <= onNewel || at >= pastNewel) continue;
            return new(
                $"{name} {job.Units.With(at)} puts the riser's housing on the newel's arris: with a newel of {job.Units.With(job.Practice.Newel)} and {job.Units.With(job.Practice.Cover)} cover it may be up to {job.Units.With(onNewel)}, or {job.Units.With(pastNewel)} and more",
                $"give {job.Units.With(onNewel)} or less, or leave {name} out and let it be solved",
                To(Math.Floor(onNewel)), To(null), To(Math.Ceiling(pastNewel)));

            Remedy To(double? to)
            {
                var words = to is { } fixedAt ? $"{name} {job.Units.With(fixedAt)}" : $"{name} left open and solved";
                return Remedy.Of(words, Remedied.WithTurn(job, index, with(turn, to)));
            }
        }
        return null;
    }
}
