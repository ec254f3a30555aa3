using Rodwright.Geometry;
using Rodwright.Stairs.Balustrades;

namespace Rodwright.Joinery.Balustrades;

/// <summary>A handrail's tenon into a newel: central, level, inside the rail's produced edges over its whole length and clear of the groove.</summary>
/// <param name="Rail">The rail.</param>
/// <param name="IsUpper">At its upper end or its lower one.</param>
/// <param name="Newel">Id of the newel.</param>
/// <param name="Shoulder">Station of the shoulder: the newel's face.</param>
/// <param name="Length">From the shoulder, mm.</param>
/// <param name="Bottom">Height of its lower edge above the lower floor.</param>
/// <param name="Top">Height of its upper edge.</param>
/// <param name="PegBack">Peg's centre from the shoulder, in the newel.</param>
internal sealed record RailEnd(RailRun Rail, bool IsUpper, string Newel, double Shoulder, double Length, double Bottom, double Top, double PegBack)
{
    /// <summary>+1 when it points up the rail, -1 down.</summary>
    public int Points => IsUpper ? 1 : -1;

    /// <summary>Station of its end.</summary>
    public double Tip => Shoulder + Points * Length;

    /// <summary>Height of its peg: its middle.</summary>
    public double PegAt => (Bottom + Top) / 2;

    /// <summary>Id of its joint.</summary>
    public string Joint => $"{Rail.Id}/{Newel}";

    /// <summary>What it fills, in (s, z).</summary>
    public Path2 Shape => Path2.Rectangle(Math.Min(Shoulder, Tip), Bottom, Math.Max(Shoulder, Tip), Top);

    /// <summary>Its outline from the rail's lower edge up, shoulder to shoulder.</summary>
    public Point2[] Outline => [new(Shoulder, Bottom), new(Tip, Bottom), new(Tip, Top), new(Shoulder, Top)];
}
