using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// Finds how far the first and last riser of a turn stand outside the newel's centre lines: the smallest e, in whole millimetres, at which the tapered
/// goings are no less than they must be and the narrow ends, along the faces, no less than the regulation's limit (setting-out.md 2.2).
/// </summary>
public static class TurnSolver
{
    /// <summary>What the tapered steps must keep, mm.</summary>
    /// <param name="Going">Least going on the walking line.</param>
    /// <param name="Narrow">Least narrow end along the faces.</param>
    public sealed record Wanted(double Going, double Narrow)
    {
        /// <summary>The unit in which what decided is told.</summary>
        public Units Units { get; init; } = Units.Millimetres;
    }

    /// <summary>The offsets found.</summary>
    /// <param name="FirstRiser">e_in, mm.</param>
    /// <param name="LastRiser">e_out, mm.</param>
    /// <param name="DecidedBy">Which constraint decided, in words.</param>
    /// <param name="Fits">False when no offset inside the newel keeps both limits.</param>
    /// <param name="Going">Least tapered going reached.</param>
    /// <param name="Narrow">Least narrow end reached.</param>
    public sealed record Found(double FirstRiser, double LastRiser, string DecidedBy, bool Fits, double Going, double Narrow);

    /// <summary>Solves the offsets that the job leaves open; fixed ones are kept as they are.</summary>
    /// <param name="site">Where the turn stands.</param>
    /// <param name="method">How its risers are laid.</param>
    /// <param name="turn">The turn as the job has it.</param>
    /// <param name="wanted">What its steps must keep.</param>
    /// <param name="measure">How the regulation measures a going.</param>
    /// <param name="practice">Cover and riser.</param>
    /// <param name="straight">Going of the straight steps, mm.</param>
    public static Found Solve(TurnSite site, TurnMethod method, Turn turn, Wanted wanted, GoingMeasure measure, Practice practice, double straight)
    {
        if (turn is { FirstRiser: { } fixedFirst, LastRiser: { } fixedLast })
            return Report(fixedFirst, fixedLast, Decided(turn, "", wanted.Units));
        if (method.Shares && turn.SharedBefore + turn.SharedAfter > 0 && AtEqualGoings() is { } balanced)
            return Report(balanced.First, balanced.Last, Decided(turn, $"going: every step {wanted.Units.Print(straight, 2)} on the walking line, as in the flights", wanted.Units));
        var most = Math.Floor(site.HalfNewel - practice.Cover + Tolerance.Same);
        var atMost = Measure(At(most));
        // Goings and narrow ends only grow with e: what is short as far out as the cover allows is short everywhere inside the newel.
        if (IsShort(atMost) is { } pinch)
            return Report(At(most).First, At(most).Last, $"nothing fits: as far out as the cover of {wanted.Units.Print(practice.Cover)} allows ({pinch})");
        var why = "riser faces on the newel's centre keep every limit";
        for (var e = 0.0; e <= most; e++)
        {
            var reached = Measure(At(e));
            if (IsShort(reached) is not { } words) return new(At(e).First, At(e).Last, Decided(turn, why, wanted.Units), true, reached.Going, reached.Narrow);
            why = words;
        }
        throw new System.Diagnostics.UnreachableException();

        string? IsShort((double Going, double Narrow) reached)
        {
            var going = reached.Going < wanted.Going - Tolerance.Same;
            var narrow = reached.Narrow < wanted.Narrow - Tolerance.Same;
            var (goingWords, narrowWords) = ($"going: {wanted.Units.Print(wanted.Going, 2)} on the walking line", $"narrow end: {wanted.Units.Print(wanted.Narrow, 2)} along the faces");
            return going && narrow ? $"{narrowWords}, and {goingWords}" : going ? goingWords : narrow ? narrowWords : null;
        }

        (double First, double Last) At(double e) => (turn.FirstRiser ?? e, turn.LastRiser ?? e);

        // Where the steps of the turn come out exactly as long as the flights': in steps that share the taper the riser at the turn has no place of its own.
        (double First, double Last)? AtEqualGoings()
        {
            var goal = Math.Max(straight, wanted.Going);
            return Roots.Between(e => Stretch(e) - goal, Lowest(), 3 * site.HalfNewel + straight) is { } e ? At(e) : null;

            double Stretch(double e)
            {
                var (first, last) = At(e);
                var setting = Setting(turn, first, last, practice, straight, wanted.Narrow);
                var stations = WalkingPath.Of(site, setting.First, setting.Last).Shared(setting);
                var (from, to) = (stations[turn.SharedBefore], stations[^(turn.SharedAfter + 1)]);
                return measure == GoingMeasure.Chord ? WalkingPath.Of(site, setting.First, setting.Last).EqualChord(turn.Tapered, from, to) : (to - from) / turn.Tapered;
            }

            // A side without a shared step keeps its square riser on the newel.
            double Lowest() => turn.SharedBefore == 0 || turn.SharedAfter == 0 ? 0 : -0.5 * Math.Min(straight, site.Walking);
        }

        Found Report(double first, double last, string words)
        {
            var (going, narrow) = Measure((first, last));
            var fits = going >= wanted.Going - Tolerance.Joint && narrow >= wanted.Narrow - Tolerance.Joint;
            return new(first, last, words, fits, going, narrow);
        }

        (double Going, double Narrow) Measure((double First, double Last) e)
        {
            var setting = Setting(turn, e.First, e.Last, practice, straight, wanted.Narrow);
            var lines = method.Lines(site, setting);
            var path = WalkingPath.Of(site, setting.First, setting.Last);
            var (going, narrow) = (double.PositiveInfinity, double.PositiveInfinity);
            for (var j = 1; j < lines.Count; j++)
            {
                going = Math.Min(going, measure == GoingMeasure.Chord
                    ? lines[j - 1].Walking.DistanceTo(lines[j].Walking)
                    : path.StationOf(lines[j].Walking) - path.StationOf(lines[j - 1].Walking));
                narrow = Math.Min(narrow, site.OnNarrowLine(lines[j].Inner) - site.OnNarrowLine(lines[j - 1].Inner));
            }
            return (going, narrow);
        }
    }

    /// <summary>What a turn's lines are laid from, once its offsets are known.</summary>
    internal static TurnSetting Setting(Turn turn, double first, double last, Practice practice, double straight, double narrow) => new(first, last, turn.Tapered)
    {
        Before = turn.SharedBefore, After = turn.SharedAfter, Going = straight, Narrow = narrow, Cover = practice.Cover, Riser = practice.Riser, Nosing = practice.Nosing,
    };

    /// <summary>What decided the offsets, what the job fixes named first.</summary>
    public static string Decided(Turn turn, string rest, Units units)
    {
        var named = new List<string>();
        if (turn.FirstRiser is { } first) named.Add($"first riser fixed in the job at {units.Print(first)}");
        if (turn.LastRiser is { } last) named.Add($"last riser fixed in the job at {units.Print(last)}");
        if (named.Count < 2 && rest.Length > 0) named.Add(named.Count == 0 ? rest : (turn.FirstRiser is null ? "first: " : "last: ") + rest);
        return string.Join("; ", named);
    }
}
