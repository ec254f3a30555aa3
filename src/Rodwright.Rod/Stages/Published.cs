using System.Collections.Immutable;

namespace Rodwright.Rod.Stages;

/// <summary>Where the trade's rules are published; only passages that were read. Instructions name a book shortly.</summary>
public static class Published
{
    /// <summary>Short names and titles of the books.</summary>
    public static ImmutableArray<(string Name, string Title)> Books { get; } =
    [
        (Goring, "Les Goring, Manual of Purpose-Made Woodworking Joinery (Routledge)"),
        (Wood, "W. H. Wood, Practical Stair Building and Handrailing (Spon, 1894)"),
        (Academy, "A Treatise on Architecture and Building Construction, vol. 3, Stair Building (International Correspondence Schools)"),
    ];

    internal const string RiserOnNewel = Goring + ", pp. 105, 111 and 125";
    internal const string Nosing = Goring + ", p. 121";
    internal const string Dividers = Goring + ", p. 121";
    internal const string NarrowEnds = Goring + ", p. 125; " + Wood + ", plate VI";
    internal const string Margin = Goring + ", pp. 109 and 110";
    internal const string PitchBoard = Goring + ", p. 110";
    internal const string Templates = Goring + ", p. 109";
    internal const string SlantedEnds = Goring + ", p. 126";
    internal const string Shoulder = Goring + ", p. 111";
    internal const string TenonLength = Goring + ", pp. 111 and 113";
    internal const string Thirds = Goring + ", p. 112";
    internal const string DrawBore = Goring + ", p. 114";
    internal const string FourFaces = Goring + ", p. 114";
    internal const string Development = Academy + ", art. 27";
    internal const string Easing = Academy + ", arts. 28 and 39";
    internal const string Corner = Wood + ", plate VI";

    private const string Goring = "Goring";
    private const string Wood = "Wood";
    private const string Academy = "ICS";
}
