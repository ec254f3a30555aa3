using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>The risers of one stretch of the far faces as ordinates: along a flight, or along the wall across a half turn.</summary>
/// <param name="Datum">Where the ordinates count from: the first riser, or the corner the stretch begins in.</param>
/// <param name="Along">The way they count.</param>
/// <param name="Outward">Square to it, away from the stair: where the row stands.</param>
/// <param name="Stops">In climbing order.</param>
internal sealed record FigureRow(Point2 Datum, Vector2 Along, Vector2 Outward, IReadOnlyList<RowStop> Stops)
{
    private const double Same = 0.05;

    /// <summary>Where it begins and ends, along the axis of the page it runs along, mm of timber.</summary>
    public (double From, double To) Span
    {
        get
        {
            var ends = new[] { Stops.Min(s => s.Value), Stops.Max(s => s.Value) }.Select(v => Datum + v * Along).Select(p => Math.Abs(Along.X) > 0.5 ? p.X : p.Y).Order().ToList();
            return (ends[0], ends[1]);
        }
    }

    /// <summary>The rows of a plan, from the bottom up.</summary>
    public static IReadOnlyList<FigureRow> Of(StairPlan plan)
    {
        var rows = new List<FigureRow>();
        var corners = TurnPlaces.Corners(plan);
        foreach (var flight in plan.Flights)
        {
            var before = flight.Index > 0 ? plan.Turns[flight.Index - 1] : null;
            var after = flight.Index < plan.Turns.Length ? plan.Turns[flight.Index] : null;
            var first = plan.Riser(flight.FirstRiser);
            var outward = after is not null ? TurnPlaces.Outward(after, false) : before is not null ? TurnPlaces.Outward(before, true) : (first.Outer - first.Inner).Unit;
            var from = before is null ? null : corners.Last(c => c.Turn == before) is var c ? c : ((TurnPlan, Point2, string)?)null;
            var datum = from?.Item2 ?? (after is null ? first.Outer : TurnPlaces.Far(plan, after, first));
            var row = new Draft(datum, flight.Along);
            if (from is { } begin) row.Corner(begin.Item2, begin.Item3);
            if (before is not null) row.Risers(Of(plan, before).Where(r => IsPast(before, Far(before, r))).Select(r => (r, Far(before, r))));
            row.Risers(Enumerable.Range(flight.FirstRiser, flight.LastRiser - flight.FirstRiser + 1)
                .Where(k => (before is null || k > before.LastLine) && (after is null || k < after.FirstLine)).Select(k => (plan.Riser(k), TurnPlaces.Wide(plan, plan.Riser(k)))));
            if (after is not null)
            {
                row.Risers(Of(plan, after).Where(r => IsBefore(after, Far(after, r))).Select(r => (r, Far(after, r))));
                var end = corners.First(c => c.Turn == after);
                row.Corner(end.At, end.Id);
            }
            rows.Add(new(datum, flight.Along, outward, row.Stops));
            if (after?.Site.Quarters != 2) continue;
            var (a, b) = (corners.First(c => c.Turn == after), corners.Last(c => c.Turn == after));
            var across = new Draft(a.At, (b.At - a.At).Unit);
            across.Corner(a.At, a.Id);
            across.Risers(Of(plan, after).Where(r => !IsBefore(after, Far(after, r)) && !IsPast(after, Far(after, r))).Select(r => (r, Far(after, r))));
            across.Corner(b.At, b.Id);
            rows.Add(new(a.At, (b.At - a.At).Unit, after.Frame.Along, across.Stops));
        }
        return rows;

        Point2 Far(TurnPlan turn, RiserLine riser) => TurnPlaces.Far(plan, turn, riser);
    }

    private static IEnumerable<RiserLine> Of(StairPlan plan, TurnPlan turn) => plan.RiserLines.Where(r => r.Number >= turn.FirstLine && r.Number <= turn.LastLine);

    /// <summary>Whether a point of the far side lies on the incoming flight's face, its corner included.</summary>
    private static bool IsBefore(TurnPlan turn, Point2 far) => turn.Frame.Local(far) is var p && p.X > 0 && p.Y < turn.Site.OuterFace + Same && Math.Abs(p.X - turn.Site.OuterFace) < 1;

    /// <summary>Whether it lies on the outgoing flight's face, beyond the last corner.</summary>
    private static bool IsPast(TurnPlan turn, Point2 far)
    {
        var p = turn.Frame.Local(far);
        return turn.Site.Quarters == 1 ? !IsBefore(turn, far) : p.X < 0 && p.Y < turn.Site.OuterFace - Same && Math.Abs(p.X + turn.Site.OuterFace + turn.Site.Between) < 1;
    }

    /// <summary>Gathers stops, each riser once; two things at one place are one stop with both names.</summary>
    private sealed class Draft(Point2 datum, Vector2 along)
    {
        private readonly List<(RowStop Stop, bool IsCorner)> stops = [];
        private readonly HashSet<int> seen = [];

        public IReadOnlyList<RowStop> Stops => [.. stops.Select(s => s.Stop)];

        public void Corner(Point2 at, string id)
        {
            var value = (at - datum).Dot(along);
            var i = stops.FindIndex(s => !s.IsCorner && Math.Abs(s.Stop.Value - value) < Same);
            if (i >= 0) stops[i] = (stops[i].Stop with { Note = stops[i].Stop.Note + ", corner" }, false);
            else stops.Add((new(value, "corner", id), true));
        }

        public void Risers(IEnumerable<(RiserLine Riser, Point2 At)> risers)
        {
            foreach (var (riser, at) in risers)
            {
                if (!seen.Add(riser.Number)) continue;
                stops.Add((new((at - datum).Dot(along), $"riser {Number.Print(riser.Number, 0)}", ThingId.Riser(riser.Number)), false));
            }
        }
    }
}
