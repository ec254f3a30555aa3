using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;
using Rodwright.Stairs.Surveys;
using Xunit;

namespace Rodwright.Stairs.Tests.Regulations;

/// <summary>Every clause of every table with a limit: kept exactly at it, not kept just beyond.</summary>
public sealed class LimitTests
{
    /// <summary>Regulation, number of the clause in its table, whether it is the upper limit.</summary>
    public static TheoryData<string, int, bool> Limits
    {
        get
        {
            var data = new TheoryData<string, int, bool>();
            foreach (var table in RegulationCatalogue.All)
            {
                for (var i = 0; i < table.Clauses.Length; i++)
                {
                    var (limit, rule) = (table.Clauses[i].Limit, table.Clauses[i].Rule);
                    // Rises are shared out equally: there is no stair on which they differ.
                    if (rule is UniformRiseRule or FirstRiseRule or UnmeasuredRule) continue;
                    var boxes = !limit.Boxes.IsEmpty;
                    if (boxes || limit.Least is not null || limit.Reference is LimitReference.StraightGoing or LimitReference.ClearWidth) data.Add(table.Id, i, false);
                    if (boxes || limit.Most is not null || limit.Reference == LimitReference.StraightGoings) data.Add(table.Id, i, true);
                }
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public void A_clause_is_kept_at_its_limit_and_not_just_beyond(string regulation, int number, bool upper)
    {
        var table = RegulationCatalogue.Find(regulation)!;
        var clause = table.Clauses[number];
        var range = clause.Limit.On(Stair(clause.Rule, 100, table), clause.Rule.Unit);
        var at = upper ? range.Most!.Value : range.Least!.Value;
        var beyond = (clause.Rule.Unit == RuleUnit.Count ? 1 : 0.001) * (upper ? 1 : -1);

        Assert.Equal(CheckOutcome.Pass, Judged(at).Outcome);
        Assert.Equal(at, Judged(at).Measured!.Value, 6);
        var fails = Judged(at + beyond);
        Assert.Equal(clause.Weight == Weight.Limit ? CheckOutcome.Fail : CheckOutcome.Advice, fails.Outcome);

        ClauseCheck Judged(double value) => Judge.Check(Stair(clause.Rule, value, table)).Checks[number];
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public void What_is_not_kept_is_a_finding_with_clause_and_remedy(string regulation, int number, bool upper)
    {
        var table = RegulationCatalogue.Find(regulation)!;
        var clause = table.Clauses[number];
        var range = clause.Limit.On(Stair(clause.Rule, 100, table), clause.Rule.Unit);
        var beyond = upper ? range.Most!.Value + (clause.Rule.Unit == RuleUnit.Count ? 1 : 2) : range.Least!.Value - (clause.Rule.Unit == RuleUnit.Count ? 1 : 2);
        var report = Judge.Check(Stair(clause.Rule, beyond, table));
        var finding = report.Findings.First(f => f.Code == clause.Rule.Code && f.Message.Contains(clause.Number, StringComparison.Ordinal));
        Assert.Equal(clause.Weight == Weight.Limit ? Findings.Severity.Breach : Findings.Severity.Advice, finding.Severity);
        Assert.NotEmpty(finding.Where);
        Assert.NotEmpty(finding.Hint);
        Assert.DoesNotContain("∞", finding.Hint, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", finding.Hint, StringComparison.Ordinal);
    }

    /// <summary>A stair on which a rule measures a value, whatever else it is.</summary>
    private static StairPlan Stair(Rule rule, double value, Regulation table)
    {
        var flight = (Bench.Flight(2600, 13, 225) with { Regulation = table.Id }).Plan(table.Id);
        var turned = Bench.Turned(2600, 225, 4, Bench.Winders(3, 30), 5).Plan(table.Id);
        return rule switch
        {
            RiseRule => flight with { Job = Height(value * 13) },
            GoingRule or GreatestGoingRule => flight with { Job = flight.Job with { Going = value } },
            PitchRule => flight with { Job = Height(225 * Angle.FromDegrees(value).Tangent * 13) },
            TaperedPitchRule => turned.WithSteps(s => s with { GoingChord = turned.Rise / Angle.FromDegrees(value).Tangent }),
            TwoRiseAndGoingRule => flight with { Job = flight.Job with { Going = value - 2 * flight.Rise } },
            UniformGoingRule => flight with { RiserLines = Stretched(flight.RiserLines, value) },
            TaperedGoingRule => turned.WithSteps(s => s with { GoingChord = value }),
            OuterGoingRule => turned.WithSteps(s => s with { OuterGoing = value }),
            UniformTaperedGoingRule => turned.WithSteps(s => s with { GoingChord = s.Number == 6 ? 230 + value : 230 }),
            NarrowAlongFacesRule => turned.WithSteps(s => s with { NarrowAlongFaces = value }),
            NarrowStraightRule => turned.WithSteps(s => s with { NarrowStraight = value }),
            NarrowTreadWidthRule => turned.WithSteps(s => s with { NarrowTreadWidth = value }),
            NosingRule => flight with { Job = flight.Job with { Practice = new() { Nosing = value } } },
            RisersPerFlightRule when value < 2 => flight with { RiserLines = [.. flight.RiserLines.Take((int)value)] },
            RisersPerFlightRule or StraightRunRule => Bench.Flight(200 * value, (int)value, 225).Plan(table.Id),
            FlightRiseRule => flight with { Job = Height(value) },
            ClearWidthRule => flight with { ClearWidth = value },
            LandingRule => Landing(value, table),
            TaperedPerQuarterRule => Bench.Turned(2600, 225, 4, Bench.Winders((int)Math.Min(value, 6)), 5).Plan(table.Id),
            WalkingBendRule => turned with { WalkingLine = Bent(turned.WalkingLine, value) },
            TaperReachRule => Reaching(turned, value),
            // A level ceiling so far over the top nosing; a slope of 5 degrees across the stair, whose face is 32 from the wall and whose top nosing has its middle 415.5 from it.
            HeadroomRule => flight with { Job = Under(Storey.Lower, 2600 + value, 0) },
            HeadroomMiddleRule => flight with { Job = Under(Storey.Upper, value - 415.5 * Angle.FromDegrees(5).Tangent, 5) },
            HeadroomSideRule => flight with { Job = Under(Storey.Upper, value - 32 * Angle.FromDegrees(5).Tangent, 5) },
            HandrailHeightRule or GuardingHeightRule => Guarded(new()) is var plan ? plan with { Job = plan.Job with { Practice = new() { RailHeight = value } } } : null!,
            HandrailSidesRule => Sided((int)value),
            OuterHandrailRule => turned with { Job = turned.Job with { Balustrade = new() { WallRail = new() { Wanted = value >= 1 ? WallRailWanted.Always : WallRailWanted.Never } } } },
            LandingGuardingRule => Guarded(new() { UpperLanding = new() { Length = 1000 }, LandingHeight = value }),
            // 15 balusters share 12 goings of 225 less a newel of 90; 5 of 41 a landing as long as that takes.
            GuardingGapRule => Guarded(new() { Gap = value + 1e-4, Baluster = (2610 - 16 * value) / 15 }),
            LandingGapRule => Guarded(new() { Gap = value + 1e-4, UpperLanding = new() { Length = 90 + 5 * 41 + 6 * value } }),
            _ => throw new ArgumentOutOfRangeException(nameof(rule), rule.Id, "say how to make a stair for this rule"),
        };

        Job Under(Storey storey, double height, double pitch) => flight.Job with
        {
            Survey = flight.Job.Survey with { Ceilings = [new() { Storey = storey, First = new() { Height = Readings.Of(height) }, Second = new() { Out = 1000 }, Pitch = pitch }] },
        };

        StairPlan Guarded(Balustrade balustrade) => flight with { Job = flight.Job with { Balustrade = balustrade } };

        // Wider than 1 m, so that both sides may be asked for.
        StairPlan Sided(int sides) => (Bench.Flight(2600, 13, 225) with
        {
            Width = 1200, Sides = sides == 0 ? new(SideKind.Wall, SideKind.Wall) : Sides.For(Hand.Left),
            Balustrade = new() { WallRail = new() { Wanted = sides >= 2 ? WallRailWanted.Always : WallRailWanted.Never } },
        }).Plan(table.Id);

        Job Height(double height) => flight.Job with { Survey = new() { FloorToFloor = [height] } };
    }

    private static ImmutableArray<RiserLine> Stretched(ImmutableArray<RiserLine> lines, double by) =>
        lines.SetItem(^1, lines[^1] with { Walking = lines[^1].Walking + new Vector2(0, by) });

    /// <summary>The line with its bend tightened to a radius, its ends run on.</summary>
    private static Path2 Bent(Path2 line, double radius)
    {
        var corner = new Point2(line.Vertices[1].At.X, line.Vertices[2].At.Y);
        return new([line.Vertices[0], new(corner - new Vector2(0, radius), line.Vertices[1].Bulge), new(corner - new Vector2(radius, 0)), line.Vertices[^1]], false);
    }

    /// <summary>The first tapered riser crosses the walking line so far before its bend; the last stands on the bend's end.</summary>
    private static StairPlan Reaching(StairPlan plan, double reach)
    {
        var (bend, end, turn) = (plan.WalkingLine.Vertices[1].At, plan.WalkingLine.Vertices[2].At, plan.Turn!);
        var from = new Point2(bend.X, bend.Y - reach);
        return plan with
        {
            WalkingLine = new([new(new(bend.X, Math.Min(plan.WalkingLine.Vertices[0].At.Y, from.Y))), .. plan.WalkingLine.Vertices.Skip(1)], false),
            RiserLines = plan.RiserLines
                .SetItem(turn.FirstLine - 1, plan.Riser(turn.FirstLine) with { Walking = from })
                .SetItem(turn.LastLine - 1, plan.Riser(turn.LastLine) with { Walking = end }),
        };
    }

    private static StairPlan Landing(double length, Regulation table)
    {
        var plan = Bench.Turned(2600, 225, 4, Bench.Landing, 5).Plan(table.Id);
        var corner = plan.Outer.Edges[0].To;
        var line = plan.Riser(plan.Turn!.FirstLine);
        // The way out is made long, so that the way in decides.
        var last = plan.Riser(plan.Turn.LastLine);
        return plan with
        {
            RiserLines = plan.RiserLines
                .SetItem(plan.Turn.FirstLine - 1, line with { Outer = corner - new Vector2(0, length) })
                .SetItem(plan.Turn.LastLine - 1, last with { Outer = corner - new Vector2(5000, 0) }),
        };
    }
}

file static class Arrays
{
    public static ImmutableArray<T> SetItem<T>(this ImmutableArray<T> items, Index at, T value) => items.SetItem(at.GetOffset(items.Length), value);
}
