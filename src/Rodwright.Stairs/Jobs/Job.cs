using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs;

/// <summary>A job: survey, wishes, practice and the regulation it is judged by. Always whole and within its ranges; made by the job file's reader.</summary>
public sealed record Job
{
    /// <summary>What the job is called, on every title block.</summary>
    public required string Title { get; init; }

    /// <summary>Id of the regulation table the job is judged by; a job keeps the id it was made under.</summary>
    public required string Regulation { get; init; }

    /// <summary>The unit its lengths are typed and read in; the properties here are millimetres whatever it is.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    /// <summary>What was measured.</summary>
    public required Survey Survey { get; init; }

    /// <summary>Flights and turns.</summary>
    public required Layout Layout { get; init; }

    /// <summary>Open and walled sides.</summary>
    public required Sides Sides { get; init; }

    /// <summary>Going of the straight steps, mm, riser face to riser face.</summary>
    public required double Going { get; init; }

    /// <summary>Width over the strings, mm.</summary>
    public required double Width { get; init; }

    /// <summary>What open sides end in at the foot and the head.</summary>
    public Ends Ends { get; init; } = Ends.Usual;

    /// <summary>How the bottom step ends at an open side.</summary>
    public BottomStep BottomStep { get; init; } = new();

    /// <summary>The balustrade of open sides; null where none is made.</summary>
    public Balustrade? Balustrade { get; init; }

    /// <summary>Wedges, glue blocks and pegs as pieces; null where they are not listed.</summary>
    public SmallParts? SmallParts { get; init; }

    /// <summary>Nosing and apron lining at the open edges of landings; null where none are made.</summary>
    public LandingEdge? LandingEdge { get; init; }

    /// <summary>Carriages under wide flights; null where none are made.</summary>
    public Carriage? Carriage { get; init; }

    /// <summary>1 for a stair; less for a teaching model: regulation limits are multiplied by it, timber is not.</summary>
    public double ModelScale { get; init; } = 1;

    /// <summary>The shop's sizes and habits.</summary>
    public Practice Practice { get; init; } = new();

    /// <summary>What was wished for when the layout was chosen; null when nothing was written.</summary>
    public Wishes? Wishes { get; init; }

    /// <summary>
    /// Whether the stair is the mirror image of the one set out left-handed. A straight flight walled on both sides has no hand: x = 0 is its left string's
    /// centre line whatever the job says.
    /// </summary>
    public bool IsRightHanded => Layout.Hand == Hand.Right && !(Layout.Turn is null && Sides is { Left: SideKind.Wall, Right: SideKind.Wall });

    /// <summary>The side the stair turns to (a straight flight: the side of its hand).</summary>
    public SideKind InnerSide => Layout.Hand == Hand.Left ? Sides.Left : Sides.Right;

    /// <summary>The other side.</summary>
    public SideKind OuterSide => Layout.Hand == Hand.Left ? Sides.Right : Sides.Left;

    /// <summary>Whether any side is walled; the outside of a turn always is.</summary>
    public bool HasWallString => Sides.Left == SideKind.Wall || Sides.Right == SideKind.Wall;

    /// <summary>Whether any side is open.</summary>
    public bool HasNewelString => Sides.Left == SideKind.Open || Sides.Right == SideKind.Open;

    /// <summary>Newels stand only where a side is open or the stair turns.</summary>
    public bool HasNewels => HasNewelString || Layout.Turn is not null;

    /// <summary>Rise of every step: the measured height over the number of risers, mm.</summary>
    public double Rise => Survey.Height / Layout.Risers;
}
