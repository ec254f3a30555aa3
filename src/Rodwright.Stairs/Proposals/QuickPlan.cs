using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// One family with its numbers of tapered steps, newel and width: judges risers, goings of the flights and going in closed form, without a plan. Set out left-handed, like every plan;
/// keeps its working numbers in itself, so that a judgement allocates nothing.
/// </summary>
internal sealed class QuickPlan
{
    public const int Bounds = (int)Bound.WholeStair;
    private readonly RuleBounds rules;
    private readonly QuickRoom room;
    private readonly TurnFits[] turns;
    private readonly bool[] against;
    private readonly double height;
    private readonly double inner;
    private readonly double outer;
    private readonly bool innerOpen;
    private readonly TurnFit[] found;
    private readonly double[] low;
    private readonly double[] high;

    public QuickPlan(Job job, RuleBounds rules, Pace pace, QuickRoom room, TurnFits[] turns, bool[] against)
    {
        Pace = pace;
        (Job, this.rules, this.room, this.turns, this.against, height) = (job, rules, room, turns, against, job.Survey.Height);
        (inner, outer) = (PlanShape.Thickness(job, job.InnerSide), PlanShape.Thickness(job, job.OuterSide));
        innerOpen = job.InnerSide == SideKind.Open;
        Clear = job.Width - inner - outer;
        found = new TurnFit[turns.Length];
        (low, high) = (new double[turns.Length + 1], new double[turns.Length + 1]);
        TurnSteps = turns.Sum(t => t.Turn.Steps);
        Tapered = turns.Sum(t => t.IsLanding ? 0 : t.Turn.Steps + t.Turn.SharedBefore + t.Turn.SharedAfter);
    }

    /// <summary>Newel, width and practice; its layout is none of the candidates'.</summary>
    public Job Job { get; }

    /// <summary>The steps goings are counted in.</summary>
    public Pace Pace { get; }

    public double Clear { get; }

    public int TurnSteps { get; }

    public int Tapered { get; }

    public TurnFits[] Turns => turns;

    /// <summary>Where the turns of the last judgement were found to stand.</summary>
    public TurnFit[] Found => found;

    /// <summary>Measures of the last judgement.</summary>
    public QuickMeasures Measures { get; private set; }

    /// <summary>Judges one candidate; by how much each bound is passed, or 0, goes into <paramref name="over"/>. True when none is.</summary>
    /// <param name="risers">Number of risers.</param>
    /// <param name="goings">Goings of each flight.</param>
    /// <param name="going">Going, counted in <see cref="Pace"/>.</param>
    /// <param name="over">One place for each bound.</param>
    /// <param name="whole">Whether to go on once one is passed: what stands later is then judged too.</param>
    public bool Judge(int risers, ReadOnlySpan<int> goings, int going, Span<double> over, bool whole)
    {
        over[..Bounds].Clear();
        double rise = height / risers, g = Pace.At(going);
        var straight = false;
        foreach (var n in goings) straight |= n > 0;
        over[(int)Bound.Rise] = Off(rise, rules.Rise);
        if (straight)
        {
            over[(int)Bound.Going] = Off(g, rules.Going);
            over[(int)Bound.Pitch] = Math.Max(0, rise - rules.Slope * g);
            over[(int)Bound.StringWidth] = Math.Max(0, StringWidth(rise, g) - Math.Min(Job.Practice.WallString.Width, innerOpen ? Job.Practice.NewelString.Width : double.PositiveInfinity));
        }
        over[(int)Bound.TwoRiseAndGoing] = Off(2 * rise + g, rules.TwoRiseAndGoing);
        over[(int)Bound.ClearWidth] = Math.Max(0, rules.ClearWidth - Clear);
        if (!whole && !Fits(over)) return false;
        JudgeTurns(rise, going, g, goings, over);
        if (!whole && !Fits(over)) return false;
        JudgeFlights(risers, rise, goings, over);
        JudgeShoulders(goings, g, over);
        if (!whole && !Fits(over)) return false;
        JudgeRoom(risers, rise, goings, g, over);
        return Fits(over);
    }

    private static bool Fits(ReadOnlySpan<double> over) => !over[..Bounds].ContainsAnyInRange(1e-6, double.PositiveInfinity);

    /// <summary>Whether what was passed could be kept with a larger newel: its narrow ends are wider, and where they are wide enough its risers need not stand so far out.</summary>
    public bool WantsNewel(ReadOnlySpan<double> over)
    {
        if (over[(int)Bound.Narrow] > 0 || over[(int)Bound.TaperedGoing] > 0 || over[(int)Bound.Proud] > 0) return true;
        if (!(over[(int)Bound.RoomLength] > 0 || over[(int)Bound.RoomWidth] > 0 || over[(int)Bound.WellLength] > 0 || over[(int)Bound.WellWidth] > 0)) return false;
        for (var i = 0; i < turns.Length; i++)
            if (!turns[i].IsLanding && found[i].Offset > 0) return true;
        return false;
    }

    /// <summary>Whether the stair is too large for the room: then it is with every longer going.</summary>
    public static bool IsTooLarge(ReadOnlySpan<double> over) => over[(int)Bound.RoomLength] > 1e-6 || over[(int)Bound.RoomWidth] > 1e-6;

    /// <summary>
    /// Width of board under straight steps: from the margin above the margin line to the lowest point of the housings and the cover below it (setting-out.md 3 and 4); 0 for risers on
    /// treads, whose housings end elsewhere: the whole stair tells.
    /// </summary>
    private double StringWidth(double rise, double going)
    {
        var p = Job.Practice;
        if (p.RiserOnTread) return 0;
        var slope = rise / going;
        var back = going + p.Riser + p.TreadWedge.RunOn;
        var tread = back * slope + p.Tread + p.TreadWedge.Thin + (p.TreadWedge.Length + p.Riser + p.TreadWedge.RunOn) / p.TreadWedge.Taper;
        return p.Margin + p.CoverBelow + tread / Math.Sqrt(1 + slope * slope);
    }

    private static double Off(double value, (double Least, double Most) range) => Math.Max(0, Math.Max(range.Least - value, value - range.Most));

    private void JudgeTurns(double rise, int going, double g, ReadOnlySpan<int> goings, Span<double> over)
    {
        var narrowest = double.PositiveInfinity;
        for (var i = 0; i < turns.Length; i++)
        {
            var fit = found[i] = turns[i].For(going);
            if (fit.Past && (goings[i] == 0 || goings[i + 1] == 0)) over[(int)Bound.Shoulders] = fit.Offset;
            Raise(over, Bound.Proud, Job.Practice.NewelHousing - Tolerance.Same - (turns[i].Site.HalfNewel - turns[i].Site.InnerFace));
            if (turns[i].IsLanding) continue;
            if (turns[i].Turn.SharedBefore > goings[i] || turns[i].Turn.SharedAfter > goings[i + 1]) over[(int)Bound.Shoulders] = g;
            narrowest = Math.Min(narrowest, fit.Measure.Faces);
            Raise(over, Bound.Narrow, fit.NarrowShort);
            Raise(over, Bound.TaperedGoing, fit.GoingShort);
            Raise(over, Bound.LongestGoing, fit.Measure.Longest - rules.GreatestGoing);
            if (double.IsFinite(rules.TaperedSlope)) Raise(over, Bound.TaperedPitch, rise - rules.TaperedSlope * fit.Measure.Going);
            Raise(over, Bound.TwoRiseAndGoing, Off(2 * rise + fit.Measure.Going, rules.TwoRiseAndGoing));
        }
        Measures = Measures with { Narrowest = narrowest };
    }

    private static void Raise(Span<double> over, Bound bound, double by)
    {
        if (by > over[(int)bound]) over[(int)bound] = by;
    }

    private void JudgeFlights(int risers, double rise, ReadOnlySpan<int> goings, Span<double> over)
    {
        var (most, least, flight, run, last) = (0, int.MaxValue, 1, 0, 0);
        for (var i = 0; i <= turns.Length; i++)
        {
            run = Math.Max(run, goings[i] + 1);
            flight += goings[i];
            if (i == turns.Length) break;
            if (turns[i].IsLanding)
            {
                // Risers up to the landing; the next flight begins with the riser off it.
                Count(flight - last);
                last = flight;
            }
            flight += turns[i].Turn.Steps;
        }
        Count(risers - last);
        Raise(over, Bound.StraightRun, run - rules.StraightRun);
        Raise(over, Bound.RisersPerFlight, Math.Max(most - rules.RisersPerFlight.Most, rules.RisersPerFlight.Least - least));
        Raise(over, Bound.FlightRise, most * rise - rules.FlightRise);

        void Count(int n) => (most, least) = (Math.Max(most, n), Math.Min(least, n));
    }

    /// <summary>The string between two newels on one side needs room for its shoulders.</summary>
    private void JudgeShoulders(ReadOnlySpan<int> goings, double going, Span<double> over)
    {
        var newel = Job.Practice.Newel;
        for (var i = 0; i <= turns.Length; i++)
        {
            bool isFirst = i == 0, isLast = i == turns.Length;
            if (isFirst && isLast)
            {
                if (innerOpen) Raise(over, Bound.Shoulders, newel + newel / 4 - goings[i] * going);
                continue;
            }
            if ((isFirst || isLast) && (goings[i] == 0 || !innerOpen)) continue;
            if (!isFirst && !isLast && against[i] != against[i - 1]) continue;
            // At an end of the stair the flight's inner side has a newel only where the turn beside it is on that side.
            var centres = goings[i] * going + (isLast ? 0 : found[i].Offset) + (isFirst ? 0 : found[i - 1].Offset);
            Raise(over, Bound.Shoulders, newel + newel / 4 - centres);
        }
    }

    private void JudgeRoom(int risers, double rise, ReadOnlySpan<int> goings, double g, Span<double> over)
    {
        var across = inner / 2 + Clear + outer / 2;
        var box = new Footprint();
        var (ox, oy, dx, dy, start, first) = (0.0, 0.0, 0.0, 1.0, 0.0, 1);
        var z = room.Ceiling - rules.Headroom;
        var walked = new Footprint();
        var (area, outerRun, innerRun, newels) = (0.0, 0.0, 0.0, (innerOpen ? 2 : 0) * 1250.0);
        var width = Job.Width;
        for (var i = 0; i <= turns.Length; i++)
        {
            var end = start + goings[i] * g;
            low[i] = i > 0 ? -turns[i - 1].Site.OuterFace - (against[i - 1] ? inner : outer) : start;
            high[i] = i < turns.Length ? end + found[i].Offset + turns[i].Site.OuterFace + (against[i] ? inner : outer) : end + Job.Practice.Riser + Job.Practice.Packing;
            box.Add(ox, oy, dx, dy, -inner / 2, inner / 2 + Clear + outer, low[i], high[i]);
            Over(i, goings);
            area += goings[i] * g * width;
            innerRun += goings[i] * g;
            outerRun += high[i] - low[i];
            if (i == turns.Length) break;
            // On to the next flight: its origin is opposite the turn's newel, on its left string's centre line.
            var (turn, fit) = (turns[i].Turn, found[i]);
            var well = turn.Quarters == 2 ? 2 * (turns[i].Site.InnerFace - inner / 2) + turns[i].Site.Between : 0;
            area += turn.Quarters == 1 ? width * (width + 2 * fit.Offset - inner) : (width - inner / 2 + well / 2 + fit.Offset) * (2 * width - inner + well);
            newels += (turns[i].Site.Between > 0 ? 2 : 1) * (1100 + (first + goings[i]) * rise);
            var (cx, cy) = against[i] ? (across, end + fit.Offset) : (0.0, end + fit.Offset);
            (ox, oy) = (ox + cx * dy + cy * dx, oy - cx * dx + cy * dy);
            if (turn.Quarters == 2)
            {
                (ox, oy) = (ox - well * dy, oy + well * dx);
                (dx, dy) = (-dx, -dy);
            }
            else if (against[i])
            {
                (dx, dy) = (dy, -dx);
                (ox, oy) = (ox - across * dy, oy + across * dx);
            }
            else
            {
                (dx, dy) = (-dy, dx);
            }
            first += goings[i] + turn.Steps;
            start = fit.Offset;
        }
        Room(box, walked, g, rise, goings[0], over);
        var slant = Math.Sqrt(1 + rise / g * (rise / g));
        var p = Job.Practice;
        var timber = (outerRun * p.WallString.Thickness * p.WallString.Width + innerRun * p.NewelString.Thickness * p.NewelString.Width) * slant
            + area * p.Tread + risers * Clear * rise * p.Riser + newels * p.Newel * p.Newel;
        Measures = Measures with
        {
            Comfort = 2 * rise + g, Slope = rise / g, FloorArea = area / 1e6, Timber = timber / 1e9, TaperedSteps = Tapered, Going = g, Rise = rise,
        };

        // What is walked higher than the headroom under the ceiling must lie within the well, the top step apart.
        void Over(int i, ReadOnlySpan<int> goings)
        {
            var nosing = Job.Practice.Nosing;
            var isLast = i == turns.Length;
            if (isLast && goings[i] == 0) return;
            var end = start + goings[i] * g;
            var to = isLast ? end - nosing - g : end + found[i].Offset + turns[i].Site.OuterFace;
            if (!isLast && (first + goings[i]) * rise <= z && (first + goings[i] + turns[i].Turn.Steps) * rise > z) to = end;
            var at = start + (z / rise - first) * g - nosing;
            if (at <= start - nosing && i > 0 && (first - turns[i - 1].Turn.Steps) * rise >= z) at = -turns[i - 1].Site.OuterFace;
            else at = Math.Max(at, start - nosing);
            if (at < to - 1e-9) walked.Add(ox, oy, dx, dy, inner / 2, inner / 2 + Clear, at, to);
        }
    }

    private void Room(Footprint box, Footprint walked, double g, double rise, int before, Span<double> over)
    {
        over[(int)Bound.RoomLength] = Math.Max(0, box.Top - Math.Min(0, box.Bottom) - room.Length);
        over[(int)Bound.RoomWidth] = Math.Max(0, box.Right - box.Left + room.Gap - room.Width);
        var headroom = double.PositiveInfinity;
        if (double.IsFinite(room.Ceiling))
        {
            var from = room.From ?? (turns.Length > 0 && room.HasCorner ? room.Length - box.Top : 0);
            var near = room.WellAlong is { } along ? turns.Length == 0 && room.From is null ? box.Top - room.WellLength : along - from : box.Top - room.WellLength;
            // Out from the wall: the back of the outer string stands against it.
            var wall = inner / 2 + Clear + outer + room.Gap;
            if (walked.Any)
            {
                over[(int)Bound.WellLength] = Math.Max(0, Math.Max(near - walked.Bottom, walked.Top - near - room.WellLength));
                over[(int)Bound.WellWidth] = Math.Max(0, Math.Max(wall - walked.Left - room.WellOutEnd, room.WellOut - (wall - walked.Right)));
            }
            var edge = Math.Min(near, before * g);
            headroom = edge <= -Job.Practice.Nosing ? 600 + rules.Headroom : room.Ceiling - rise * (1 + (edge + Job.Practice.Nosing) / g);
        }
        Measures = Measures with { Headroom = headroom };
    }
}
