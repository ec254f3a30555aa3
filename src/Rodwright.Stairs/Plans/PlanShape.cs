using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>The lengths a plan is built from, worked out once (plan frame, first turn to the left as the job's hand, mm).</summary>
internal sealed record PlanShape
{
    public required Job Job { get; init; }

    public required Regulation Regulation { get; init; }

    public required double HalfNewel { get; init; }

    /// <summary>Thickness of the board on the left side, which is the inner side of a stair that turns one way.</summary>
    public required double LeftThickness { get; init; }

    public required double RightThickness { get; init; }

    /// <summary>Between the strings' faces.</summary>
    public required double ClearWidth { get; init; }

    /// <summary>The walking line, from the string's face on the side of the turn.</summary>
    public required double Inset { get; init; }

    public required ImmutableArray<Leg> Legs { get; init; }

    public required ImmutableArray<TurnShape> Turns { get; init; }

    /// <summary>Between the centre lines of the two strings.</summary>
    public double Across => LeftThickness / 2 + ClearWidth + RightThickness / 2;

    public int Risers => Legs[^1].LastRiser;

    /// <summary>What was said of the sides of each flight.</summary>
    public required ImmutableArray<Flight> Sides { get; init; }

    /// <summary>
    /// Whether a side of a flight is open: as the flight itself says; otherwise on the outside of a turn as the stair's outer side, and elsewhere, on the inside of
    /// one, as its inner side.
    /// </summary>
    public bool IsOpen(int leg, Hand side)
    {
        var isHand = side == Hand.Left;
        // The job's own left is the plan's left only where the job's hand is left.
        if ((isHand == (Job.Layout.Hand == Hand.Left) ? Sides[leg].Left : Sides[leg].Right) is { } own) return own == SideKind.Open;
        var beside = new[] { leg > 0 ? Turns[leg - 1] : null, leg < Turns.Length ? Turns[leg] : null }.OfType<TurnShape>().ToList();
        if (beside.Count == 0) return (isHand ? Job.InnerSide : Job.OuterSide) == SideKind.Open;
        return (beside.Any(t => t.Hand != side) ? Job.OuterSide : Job.InnerSide) == SideKind.Open;
    }

    /// <summary>Whether a newel stands at the outer corner of a turn: where a flight beside it is open there.</summary>
    public bool HasOuterNewel(TurnShape turn)
    {
        var far = turn.Hand == Hand.Left ? Hand.Right : Hand.Left;
        return IsOpen(turn.Index, far) || IsOpen(turn.Index + 1, far);
    }

    /// <summary>Whether the newel at an end of an open side is half a newel against a wall.</summary>
    public bool IsHalf(bool isTop) => (isTop ? Job.Ends.Head : Job.Ends.Foot) == EndNewel.HalfNewel;

    /// <summary>Whether the bottom step has a rounded end on a side: its newel stands back at the second riser.</summary>
    public bool IsRounded(Hand side) => Job.BottomStep.Shape == BottomShape.BullNose && Legs[0].Goings > 0 && IsOpen(0, side);

    /// <summary>Station along the first leg of the newel at the foot of a side.</summary>
    public double Foot(Hand side) => Legs[0].Start + (IsRounded(side) ? Job.Going : 0);

    /// <summary>From the newel's centre to that of a newel at the outer corner, across and along.</summary>
    public double OuterCentre(TurnShape turn) => turn.Site.OuterFace + ThicknessOf(turn.Hand == Hand.Left ? Hand.Right : Hand.Left) / 2;

    public double ThicknessOf(Hand side) => side == Hand.Left ? LeftThickness : RightThickness;

    /// <summary>The turn a leg leads to or, without one, comes from; null for a straight stair.</summary>
    public TurnShape? TurnAt(int leg) => leg < Turns.Length ? Turns[leg] : leg > 0 ? Turns[leg - 1] : null;

    /// <summary>x of a string's visible face in a leg.</summary>
    public double FaceX(Hand side) => side == Hand.Left ? LeftThickness / 2 : LeftThickness / 2 + ClearWidth;

    /// <summary>x, in a leg beside it, of the face that a turn's newel shows to the stair; an index that is no turn's stands for a newel on the string's centre line.</summary>
    public double NewelX(Hand side, int turn)
    {
        var off = HalfNewel - (turn >= 0 && turn < Turns.Length && Turns[turn].Hand == side ? Turns[turn].Shift : 0);
        return side == Hand.Left ? off : Across - off;
    }

    /// <summary>x of a string's centre line.</summary>
    public double CentreX(Hand side) => side == Hand.Left ? 0 : Across;

    /// <summary>x of the walking line in a leg.</summary>
    public double WalkingX(int leg) => TurnAt(leg)?.Hand == Hand.Right ? Across - RightThickness / 2 - Inset : LeftThickness / 2 + Inset;

    public static double Thickness(Job job, SideKind side) => (side == SideKind.Open ? job.Practice.NewelString : job.Practice.WallString).Thickness;
}

/// <summary>A flight as it stands in plan: x across from the left string's centre line, y up along it.</summary>
/// <param name="Index">0 for the lowest.</param>
/// <param name="Goings">Straight steps; may be 0.</param>
/// <param name="FirstRiser">Number of the riser it begins with.</param>
/// <param name="Along">Unit direction it climbs in.</param>
/// <param name="Origin">x = 0, y = 0: on the left string's centre line, opposite the newel of the turn before it.</param>
/// <param name="Start">y of its first riser's face.</param>
/// <param name="End">y of its last riser's face.</param>
internal sealed record Leg(int Index, int Goings, int FirstRiser, Vector2 Along, Point2 Origin, double Start, double End)
{
    public int LastRiser => FirstRiser + Goings;

    public Point2 At(double x, double y) => Origin + x * Along.Right + y * Along;
}

/// <summary>A turn as solved.</summary>
/// <param name="Turn">As the job has it.</param>
/// <param name="Index">0 for the lowest.</param>
/// <param name="Frame">Where it stands, to which hand it turns.</param>
/// <param name="Site">Its lengths.</param>
/// <param name="Method">How its risers are laid.</param>
/// <param name="Found">Where its first and last risers stand.</param>
/// <param name="FirstLine">Number of its first riser.</param>
internal sealed record TurnShape(Turn Turn, int Index, TurnFrame Frame, TurnSite Site, TurnMethod Method, TurnSolver.Found Found, int FirstLine)
{
    public Hand Hand => Frame.Hand;

    public int LastLine => FirstLine + Turn.Steps;

    public bool IsLanding => Turn.Kind == TurnKind.Landing;

    public int Quarters => Turn.Quarters;

    /// <summary>Between the centres of the newels of a half turn; 0 where it has one.</summary>
    public double Between => Site.Between;

    /// <summary>How far the newel's centre stands off the strings' centre lines: half of a well that its newel fills.</summary>
    public double Shift { get; init; }

    /// <summary>The centre of the newel it ends with; the frame's own where it has only one.</summary>
    public Point2 LastCentre => Frame.World(new(-Between, 0));
}
