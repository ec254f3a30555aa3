namespace Rodwright.Stairs.Jobs;

/// <summary>
/// The shop's sizes and habits, mm. Every value is a default of common practice (trade-practice.md 3 to 5, setting-out.md 3 to 7)
/// that the job file may change.
/// </summary>
public sealed record Practice
{
    /// <summary>Side of the square newel; default 90.</summary>
    public double Newel { get; init; } = 90;

    /// <summary>Wall string section; default 32 x 270.</summary>
    public Board WallString { get; init; } = new(32, 270);

    /// <summary>Newel string section; default 32 x 270.</summary>
    public Board NewelString { get; init; } = new(32, 270);

    /// <summary>Thickness of the treads; default 22.</summary>
    public double Tread { get; init; } = 22;

    /// <summary>Thickness of the risers; default 12.</summary>
    public double Riser { get; init; } = 12;

    /// <summary>How far the nosing stands in front of the riser face below it; default 20.</summary>
    public double Nosing { get; init; } = 20;

    /// <summary>Square distance from the margin line to the string's upper edge; default 50.</summary>
    public double Margin { get; init; } = 50;

    /// <summary>Depth of the housings in strings; default 12.</summary>
    public double Housing { get; init; } = 12;

    /// <summary>Depth of the housings in newels; default 12 (18 where the riser is screwed).</summary>
    public double NewelHousing { get; init; } = 12;

    /// <summary>Wood that must remain between a housing and a newel's arris; default 10.</summary>
    public double Cover { get; init; } = 10;

    /// <summary>A nosing may stand this far beyond the newel's face before it is notched round the newel; default 15.</summary>
    public double NosingPastNewel { get; init; } = 15;

    /// <summary>Least distance from a nosing to the string's upper edge after easing; default 25.</summary>
    public double NosingCover { get; init; } = 25;

    /// <summary>Wood left below the lowest point of a housing; default 15.</summary>
    public double CoverBelow { get; init; } = 15;

    /// <summary>How far the upper wall string is let into the lower one at the corner; default 12.</summary>
    public double Corner { get; init; } = 12;

    /// <summary>How the upper wall string meets the lower one at the corner; default housed.</summary>
    public CornerJoint CornerJoint { get; init; } = CornerJoint.Housed;

    /// <summary>Thickness of the tongue of a tongued corner; null takes a third of the wall string.</summary>
    public double? CornerTongue { get; init; }

    /// <summary>Thickness of the tongue at the corner, mm.</summary>
    public double Tongue => CornerTongue ?? WallString.Thickness / 3;

    /// <summary>How many tails a dovetailed corner has; null takes one to about 60 of its height.</summary>
    public int? CornerTails { get; init; }

    /// <summary>Slope of the tails: they spread by 1 in this many; default 6 (common practice for softwood, 8 for hardwood).</summary>
    public double CornerSlope { get; init; } = 6;

    /// <summary>Tangent length of the easings; default 150, 0 for none.</summary>
    public double Easing { get; init; } = 150;

    /// <summary>Skirting height, where a wall string's upper edge meets the floor's skirting; default 120.</summary>
    public double Skirting { get; init; } = 120;

    /// <summary>Skirting height on landings and on the upper floor; null takes <see cref="Skirting"/>.</summary>
    public double? SkirtingAbove { get; init; }

    /// <summary>How the foot of a wall string meets the skirting; default cut plumb.</summary>
    public SkirtingJoint SkirtingJoint { get; init; } = SkirtingJoint.Plumb;

    /// <summary>Tangent length of an eased foot, mm; default 250 (trade-practice.md 3: 200 to 300 at the skirting).</summary>
    public double SkirtingEasing { get; init; } = 250;

    /// <summary>Height of the skirting on a floor at a level above the lower one, mm.</summary>
    public double SkirtingAt(double level) => level > Geometry.Tolerance.Same ? SkirtingAbove ?? Skirting : Skirting;

    /// <summary>Length of the level top at the head of a wall string; default 100.</summary>
    public double HeadLevel { get; init; } = 100;

    /// <summary>Thickness of the upper floor's boards, and of a landing's; default 22.</summary>
    public double FloorBoards { get; init; } = 22;

    /// <summary>Packing between the last riser and the trimmer; default 0.</summary>
    public double Packing { get; init; }

    /// <summary>True when a riser stands on the tread below it; false (default) when it runs down behind that tread.</summary>
    public bool RiserOnTread { get; init; }

    /// <summary>Wedge under a tread; default 150 long, 4 thin, 1 in 14, run on 25.</summary>
    public WedgeShape TreadWedge { get; init; } = new(150, 4, 14, 25);

    /// <summary>Wedge behind a riser; default 100 long, 4 thin, 1 in 14, run on 25.</summary>
    public WedgeShape RiserWedge { get; init; } = new(100, 4, 14, 25);

    /// <summary>String tenons.</summary>
    public TenonPractice Tenon { get; init; } = new();

    /// <summary>Height of the handrail plumb above the pitch line; default 900.</summary>
    public double RailHeight { get; init; } = 900;

    /// <summary>How far a newel stands above the highest rail line at it; default 100.</summary>
    public double NewelAboveRail { get; init; } = 100;

    /// <summary>How far the foot of a top newel hangs below the string's lower edge; default 150.</summary>
    public double TopNewelDrop { get; init; } = 150;

    /// <summary>True when the turn's newel hangs, its foot <see cref="TopNewelDrop"/> below its lowest joint; false (default) when it stands on the floor.</summary>
    public bool PendantNewel { get; init; }

    /// <summary>How far a newel that stands on the floor runs down past it, for fixing or through to a lower floor; default 0.</summary>
    public double NewelBelowFloor { get; init; }

    /// <summary>Front to back of a landing's or upper floor's nosing piece; default 95.</summary>
    public double NosingPiece { get; init; } = 95;

    /// <summary>Boards for tapered treads are glued up from strips no wider than this; default 195 (common practice).</summary>
    public double GlueStrip { get; init; } = 195;

    /// <summary>Least thickness of a tapered riser's end at full depth of its housing; default 3.</summary>
    public double RiserEnd { get; init; } = 3;

    /// <summary>How much may be scribed off the back of a wall string, or hidden behind a cover mould, where the wall is not true; default 10 (common practice).</summary>
    public double Scribing { get; init; } = 10;

    /// <summary>Timber of strings, treads and newels as it stands on the parts list; default "redwood".</summary>
    public string Timber { get; init; } = "redwood";

    /// <summary>Material of the risers as it stands on the parts list; default "plywood".</summary>
    public string RiserMaterial { get; init; } = "plywood";
}
