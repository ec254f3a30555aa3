using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// A string's tenons into a newel (setting-out.md 5): a level band inside the board over the whole tenon, in thirds: tenon, gap with haunch, tenon.
/// </summary>
/// <param name="Site">The string.</param>
/// <param name="IsUpper">At the string's upper end or its lower one.</param>
/// <param name="Newel">Id of the newel.</param>
/// <param name="Shoulder">Station of the shoulder: the newel's face.</param>
/// <param name="Length">Tenon length from the shoulder, mm.</param>
/// <param name="Bottom">Height of the band's lower edge above the lower floor.</param>
/// <param name="Top">Height of its upper edge.</param>
/// <param name="LowerEdge">Height of the board's lower edge at the shoulder.</param>
/// <param name="Thickness">Bare-faced: taken off the face side.</param>
/// <param name="Haunch">Length of the haunch in the gap.</param>
/// <param name="PegBack">Peg centre from the shoulder, in the newel.</param>
/// <param name="PegHeights">Height of the lower and the upper peg: the middle of its tenon, or as near as the newel's other joints allow.</param>
/// <param name="Practice">Sizes of peg, draw and clearance.</param>
public sealed record StringTenon(
    StringSite Site, bool IsUpper, string Newel, double Shoulder, double Length, double Bottom, double Top, double LowerEdge, double Thickness, double Haunch, double PegBack,
    ImmutableArray<double> PegHeights, TenonPractice Practice)
{
    /// <summary>Depth of each of the three parts of the band, mm.</summary>
    public double Third => (Top - Bottom) / 3;

    /// <summary>+1 when the tenon points up the development, -1 down.</summary>
    public int Points => IsUpper ? 1 : -1;

    /// <summary>Station of the tenon's end.</summary>
    public double Tip => Shoulder + Points * Length;

    /// <summary>
    /// From the newel's face this tenon enters by to the nearer side of another string that meets the newel square to it, mm: strings of two thicknesses do not both stand in the newel's middle.
    /// One in the same plane is taken as standing there.
    /// </summary>
    /// <param name="other">The other string's tenon.</param>
    /// <param name="newel">Side of the newel, mm.</param>
    public double To(StringTenon other, double newel)
    {
        var (own, across) = (Site.Face, other.Site.Face);
        if (Math.Abs(own.Along.Dot(across.Along)) > 0.5) return newel / 2 - other.Site.Thickness / 2;
        var back = other.Site.Thickness * (other.Site.Inner ? across.Along.Left : across.Along.Right);
        return Math.Min(Points * (own.Station(across.Through) - Shoulder), Points * (own.Station(across.Through + back) - Shoulder));
    }

    /// <summary>Bottom and top of the lower and upper tenon.</summary>
    public (double Bottom, double Top)[] Tenons => [(Bottom, Bottom + Third), (Top - Third, Top)];
}
