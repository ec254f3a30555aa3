using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>The lengths a plan is built from, worked out once (left-hand frame, mm).</summary>
internal sealed record PlanShape
{
    public required Job Job { get; init; }

    /// <summary>Goings before the turn; all of them for a straight flight.</summary>
    public required int Before { get; init; }

    /// <summary>Goings after the turn.</summary>
    public required int After { get; init; }

    public required TurnSite Site { get; init; }

    /// <summary>e_in and e_out; 0 for a straight flight.</summary>
    public required double FirstRiser { get; init; }

    public required double LastRiser { get; init; }

    public required double InnerThickness { get; init; }

    public required double OuterThickness { get; init; }

    public bool HasTurn => Job.Layout.Turn is not null;

    public double HalfNewel => Site.HalfNewel;

    /// <summary>Distance from the newel's (or inner string's) centre line to the wall's face behind the outer string.</summary>
    public double ClearWidth => Site.OuterFace - Site.InnerFace;

    /// <summary>The turn newel's centre; for a straight flight the last riser's place on the inner centre line.</summary>
    public Point2 Centre => new(0, Before * Job.Going + FirstRiser);

    /// <summary>The corner of the room: where the outer faces meet.</summary>
    public Point2 Corner => new(Site.OuterFace, Centre.Y + Site.OuterFace);

    /// <summary>Last riser's face: y of it for a straight flight, x of it after a turn.</summary>
    public double LastFace => HasTurn ? -(LastRiser + After * Job.Going) : Before * Job.Going;

    /// <summary>The riser number the turn begins with.</summary>
    public int TurnRiser => Before + 1;

    /// <summary>The riser number the turn ends with.</summary>
    public int TurnEnd => Before + 1 + (Job.Layout.Turn?.Steps ?? 0);

    /// <summary>A string's head at station s, arriving at the floor of a step.</summary>
    public StringEnd HeadAt(double s, int step) => new(StringEndKind.Head, s, step * Job.Rise);

    public static double Thickness(Job job, SideKind side) => (side == SideKind.Open ? job.Practice.NewelString : job.Practice.WallString).Thickness;
}
