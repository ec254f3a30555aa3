using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Plans;

/// <summary>
/// The stair in plan: riser lines between an inner and an outer boundary (setting-out.md 2). Set out left-handed; a right-hand stair is its mirror.
/// World frame: x = 0 on the inner string's centre line in the first flight, y = 0 at the first riser's face, first flight climbing +y.
/// </summary>
public sealed record StairPlan
{
    /// <summary>The job it was set out from.</summary>
    public required Job Job { get; init; }

    /// <summary>The regulation it is judged by.</summary>
    public required Regulation Regulation { get; init; }

    /// <summary>Riser lines in order, 1 to N.</summary>
    public required ImmutableArray<RiserLine> RiserLines { get; init; }

    /// <summary>Kind of each step: step k, riser k and the tread on it, is at index k - 1; the last is the upper floor.</summary>
    public required ImmutableArray<StepKind> Steps { get; init; }

    /// <summary>Faces on the side the stair turns to.</summary>
    public required Boundary Inner { get; init; }

    /// <summary>Faces on the other side.</summary>
    public required Boundary Outer { get; init; }

    /// <summary>The line goings are measured along, from the first riser to the last; straight, arc, straight.</summary>
    public required Path2 WalkingLine { get; init; }

    /// <summary>Distance of the walking line from the newel's centre lines, mm: the radius of its arc.</summary>
    public required double WalkingRadius { get; init; }

    /// <summary>Flights from the bottom up: one more than turns.</summary>
    public required ImmutableArray<FlightPlan> Flights { get; init; }

    /// <summary>Turns from the bottom up; none for a straight flight.</summary>
    public required ImmutableArray<TurnPlan> Turns { get; init; }

    /// <summary>The lowest turn; null for a straight flight.</summary>
    public TurnPlan? Turn => Turns.IsEmpty ? null : Turns[0];

    /// <summary>What is measured on every tapered step, from the bottom up.</summary>
    public IEnumerable<TaperedStep> TaperedSteps => Turns.SelectMany(t => t.Steps);

    /// <summary>The turn a step belongs to, its shared steps among them; null for a step of a flight.</summary>
    public TurnPlan? TurnOf(int step) => Turns.FirstOrDefault(t => (step >= t.FirstLine && step < t.LastLine) || t.Steps.Any(s => s.Number == step));

    /// <summary>The turn a newel stands in the outer corner of; null for all others.</summary>
    public TurnPlan? TurnAround(string newel) => Turns.FirstOrDefault(t => t.OuterNewels.Contains(newel));

    /// <summary>Whether a turn's newel stands on the inner side, which is the side most stairs turn to; a stair may turn to both.</summary>
    public bool IsInner(TurnPlan turn) => turn.Frame.Hand == Hand.Left != IsMirrored;

    /// <summary>The turn a newel stands at; null for those at the ends of the stair.</summary>
    public TurnPlan? TurnAt(string newel) => Turns.FirstOrDefault(t => t.Newels.Contains(newel));

    /// <summary>Newels, lowest first, inner side first.</summary>
    public required ImmutableArray<NewelSite> Newels { get; init; }

    /// <summary>String boards, outer side first, each from the bottom up.</summary>
    public required ImmutableArray<StringSite> Strings { get; init; }

    /// <summary>Rounded ends of the bottom step, inner side first; none where it is square.</summary>
    public ImmutableArray<RoundedEnd> RoundedEnds { get; init; } = [];

    /// <summary>True once mirrored for a right-hand stair.</summary>
    public bool IsMirrored { get; init; }

    /// <summary>Rise of every step, mm.</summary>
    public double Rise => Job.Rise;

    /// <summary>The unit in which the job's lengths are read and written.</summary>
    public Units Units => Job.Units;

    /// <summary>Going of the straight steps, mm.</summary>
    public double Going => Job.Going;

    /// <summary>Numbers of the steps whose treads are housed in strings, in order.</summary>
    public IEnumerable<int> CarriedSteps => Enumerable.Range(1, Steps.Length).Where(k => Steps[k - 1] is StepKind.Straight or StepKind.Tapered);

    /// <summary>Number of risers.</summary>
    public int Risers => RiserLines.Length;

    /// <summary>Pitch of the straight steps.</summary>
    public Angle Pitch => Angle.OfPitch(Rise, Going);

    /// <summary>Clear width between the strings' faces, mm.</summary>
    public required double ClearWidth { get; init; }

    /// <summary>Thickness of the board on the inner side, mm.</summary>
    public required double InnerThickness { get; init; }

    /// <summary>Thickness of the board on the outer side, mm.</summary>
    public required double OuterThickness { get; init; }

    /// <summary>Riser line k, 1 to N.</summary>
    public RiserLine Riser(int number) => RiserLines[number - 1];

    /// <summary>The riser whose face lies on the centre of the newel at the foot of a side: the first, or the second behind a rounded end.</summary>
    public int RiserAtFoot(bool inner) => RoundedEnds.Any(e => e.Inner == inner) ? 2 : 1;

    /// <summary>A riser's face in plan from the inner side to the outer one, round a rounded end of the bottom step.</summary>
    /// <param name="riser">The riser.</param>
    /// <param name="before">How far in front of the face, mm: the nosing.</param>
    public Path2 FaceOf(RiserLine riser, double before = 0)
    {
        var (inner, outer) = riser.Number > 1 ? (null, null) : (RoundedEnds.FirstOrDefault(e => e.Inner), RoundedEnds.FirstOrDefault(e => !e.Inner));
        Vertex2[] from = inner is null ? [new(riser.Inner - before * riser.Up)] : [.. inner.Line(before).Vertices];
        Vertex2[] to = outer is null ? [new(riser.Outer - before * riser.Up)] : [.. outer.Line(before).Reversed().Vertices];
        return new([.. from, .. to], false);
    }

    /// <summary>The whole plan mirrored in the y axis: the right-hand stair.</summary>
    public StairPlan Mirrored() => this with
    {
        RiserLines = [.. RiserLines.Select(r => r.Mirrored())],
        Inner = Inner.Mirrored(),
        Outer = Outer.Mirrored(),
        // Kept in climbing order: mirrored and run backwards by the path, so turned round again.
        WalkingLine = WalkingLine.Mirrored().Reversed(),
        Flights = [.. Flights.Select(f => f.Mirrored())],
        Turns = [.. Turns.Select(t => t.Mirrored())],
        Newels = [.. Newels.Select(n => n.Mirrored())],
        Strings = [.. Strings.Select(n => n.Mirrored())],
        RoundedEnds = [.. RoundedEnds.Select(e => e.Mirrored())],
        IsMirrored = !IsMirrored,
    };
}
