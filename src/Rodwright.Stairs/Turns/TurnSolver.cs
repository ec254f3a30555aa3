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
    public sealed record Wanted(double Going, double Narrow);

    /// <summary>The offsets found.</summary>
    /// <param name="FirstRiser">e_in, mm.</param>
    /// <param name="LastRiser">e_out, mm.</param>
    /// <param name="DecidedBy">Which constraint decided, in words.</param>
    /// <param name="Fits">False when no offset inside the newel keeps both limits.</param>
    /// <param name="Going">Least tapered going reached.</param>
    /// <param name="Narrow">Least narrow end reached.</param>
    public sealed record Found(double FirstRiser, double LastRiser, string DecidedBy, bool Fits, double Going, double Narrow);

    /// <summary>Solves the offsets that the job leaves open; fixed ones are kept as they are.</summary>
    public static Found Solve(TurnSite site, TurnMethod method, Turn turn, Wanted wanted, GoingMeasure measure, double cover)
    {
        if (turn is { FirstRiser: { } fixedFirst, LastRiser: { } fixedLast })
            return Report(fixedFirst, fixedLast, Decided(turn, ""));
        var most = Math.Floor(site.HalfNewel - cover + Tolerance.Same);
        var atMost = Measure(At(most));
        // Goings and narrow ends only grow with e: what is short as far out as the cover allows is short everywhere inside the newel.
        if (IsShort(atMost) is { } pinch)
            return Report(At(most).First, At(most).Last, $"nothing fits: as far out as the cover of {Number.Print(cover)} allows ({pinch})");
        var why = "riser faces on the newel's centre keep every limit";
        for (var e = 0.0; e <= most; e++)
        {
            var reached = Measure(At(e));
            if (IsShort(reached) is not { } words) return new(At(e).First, At(e).Last, Decided(turn, why), true, reached.Going, reached.Narrow);
            why = words;
        }
        throw new System.Diagnostics.UnreachableException();

        string? IsShort((double Going, double Narrow) reached)
        {
            var going = reached.Going < wanted.Going - Tolerance.Same;
            var narrow = reached.Narrow < wanted.Narrow - Tolerance.Same;
            var (goingWords, narrowWords) = ($"going: {Number.Print(wanted.Going, 2)} on the walking line", $"narrow end: {Number.Print(wanted.Narrow, 2)} along the faces");
            return going && narrow ? $"{narrowWords}, and {goingWords}" : going ? goingWords : narrow ? narrowWords : null;
        }

        (double First, double Last) At(double e) => (turn.FirstRiser ?? e, turn.LastRiser ?? e);

        Found Report(double first, double last, string words)
        {
            var (going, narrow) = Measure((first, last));
            var fits = going >= wanted.Going - Tolerance.Same && narrow >= wanted.Narrow - Tolerance.Same;
            return new(first, last, words, fits, going, narrow);
        }

        (double Going, double Narrow) Measure((double First, double Last) e)
        {
            var lines = method.Lines(site, e.First, e.Last, turn.Tapered);
            var path = new WalkingPath(site.Walking, e.First, e.Last);
            var (going, narrow) = (double.PositiveInfinity, double.PositiveInfinity);
            for (var j = 1; j < lines.Count; j++)
            {
                going = Math.Min(going, measure == GoingMeasure.Chord
                    ? lines[j - 1].Walking.DistanceTo(lines[j].Walking)
                    : path.StationOf(lines[j].Walking) - path.StationOf(lines[j - 1].Walking));
                narrow = Math.Min(narrow, NarrowStation(site, lines[j].Inner) - NarrowStation(site, lines[j - 1].Inner));
            }
            return (going, narrow);
        }
    }

    /// <summary>What decided the offsets, what the job fixes named first.</summary>
    public static string Decided(Turn turn, string rest)
    {
        var named = new List<string>();
        if (turn.FirstRiser is { } first) named.Add($"first riser fixed in the job at {Number.Print(first)}");
        if (turn.LastRiser is { } last) named.Add($"last riser fixed in the job at {Number.Print(last)}");
        if (named.Count < 2 && rest.Length > 0) named.Add(named.Count == 0 ? rest : (turn.FirstRiser is null ? "first: " : "last: ") + rest);
        return string.Join("; ", named);
    }

    /// <summary>Where a point of the narrow line lies along it, 0 opposite the newel's centre on face E.</summary>
    private static double NarrowStation(TurnSite site, Point2 p)
    {
        var h = site.HalfNewel;
        if (p.Y < h - Tolerance.Same && p.X > -h) return p.Y;
        return 2 * h - p.X;
    }
}
