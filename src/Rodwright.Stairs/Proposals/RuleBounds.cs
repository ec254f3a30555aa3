using Rodwright.Geometry;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// What a regulation's clauses allow of the things that can be judged without a plan, all clauses for one rule together. Of rise, going, pitch and their sum a table's advice counts
/// too: nothing is proposed against it. Rules that are not here are judged on the plans of what is proposed.
/// </summary>
internal sealed record RuleBounds
{
    public (double Least, double Most) Rise { get; private init; }
    public (double Least, double Most) Going { get; private init; }
    public (double Least, double Most) TwoRiseAndGoing { get; private init; }
    public (double Least, double Most) RisersPerFlight { get; private init; }

    /// <summary>Rise over going at the steepest pitch.</summary>
    public double Slope { get; private init; }
    public double TaperedSlope { get; private init; }
    public double FlightRise { get; private init; }
    public double StraightRun { get; private init; }
    public double ClearWidth { get; private init; }
    public double TaperedGoing { get; private init; }
    public bool TaperedAtLeastStraight { get; private init; }
    public double OuterGoing { get; private init; }
    public bool OuterAtLeastStraight { get; private init; }
    public double GreatestGoing { get; private init; }
    public double NarrowFaces { get; private init; }
    public double NarrowStraight { get; private init; }
    public double NarrowTread { get; private init; }
    public double Landing { get; private init; }
    public bool LandingAtLeastClear { get; private init; }

    /// <summary>Most of all the table asks for anywhere; 0 where it asks for none.</summary>
    public double Headroom { get; private init; }

    public static RuleBounds Of(Regulation table, double scale)
    {
        var (faces, straight, tread) = (Of(NarrowAlongFacesRule.Instance), Of(NarrowStraightRule.Instance), Of(NarrowTreadWidthRule.Instance));
        return new()
        {
            Rise = Of(RiseRule.Instance, advice: true), Going = Of(GoingRule.Instance, advice: true), TwoRiseAndGoing = Of(TwoRiseAndGoingRule.Instance, advice: true),
            RisersPerFlight = Of(RisersPerFlightRule.Instance), Slope = SlopeOf(PitchRule.Instance, advice: true), TaperedSlope = SlopeOf(TaperedPitchRule.Instance, advice: true),
            FlightRise = Of(FlightRiseRule.Instance).Most, StraightRun = Of(StraightRunRule.Instance).Most, ClearWidth = Of(ClearWidthRule.Instance).Least,
            TaperedGoing = Math.Max(Of(TaperedGoingRule.Instance).Least, table.LeastGoing * scale),
            TaperedAtLeastStraight = table.TaperedAtLeastStraight || Refers(TaperedGoingRule.Instance, LimitReference.StraightGoing),
            OuterGoing = Of(OuterGoingRule.Instance).Least, OuterAtLeastStraight = Refers(OuterGoingRule.Instance, LimitReference.StraightGoing),
            GreatestGoing = Math.Min(Of(GreatestGoingRule.Instance).Most, Of(TaperedGoingRule.Instance).Most),
            NarrowFaces = Math.Max(faces.Least, table.LeastNarrow * scale), NarrowStraight = straight.Least, NarrowTread = tread.Least,
            Landing = Of(LandingRule.Instance).Least, LandingAtLeastClear = Refers(LandingRule.Instance, LimitReference.ClearWidth),
            Headroom = Math.Max(0, Of(HeadroomRule.Instance).Least),
        };

        bool Refers(Rule rule, LimitReference to) => table.Clauses.Any(c => c.Rule == rule && c.Weight == Weight.Limit && c.Limit.Reference == to);

        (double Least, double Most) Of(Rule rule, bool advice = false)
        {
            var (least, most) = (double.NegativeInfinity, double.PositiveInfinity);
            foreach (var clause in table.Clauses.Where(c => c.Rule == rule && (advice || c.Weight == Weight.Limit)))
            {
                var by = clause.Limit.Scales && rule.Unit == RuleUnit.Millimetres ? scale : 1;
                least = Math.Max(least, clause.Limit.Least * by ?? least);
                most = Math.Min(most, clause.Limit.Most * by ?? most);
            }
            return (least, most);
        }

        double SlopeOf(Rule rule, bool advice) => Of(rule, advice).Most is var most && double.IsFinite(most) ? Angle.FromDegrees(most).Tangent : double.PositiveInfinity;
    }
}
