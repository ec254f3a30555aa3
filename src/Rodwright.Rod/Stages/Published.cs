namespace Rodwright.Rod.Stages;

/// <summary>Where the trade's rules are published; only passages that were read.</summary>
internal static class Published
{
    public const string RiserOnNewel = Goring + ", pp. 105, 111 and 125";
    public const string Nosing = Goring + ", p. 121";
    public const string Dividers = Goring + ", p. 121";
    public const string NarrowEnds = Goring + ", p. 125; " + Wood + ", plate VI";
    public const string Margin = Goring + ", pp. 109 and 110";
    public const string PitchBoard = Goring + ", p. 110";
    public const string Templates = Goring + ", p. 109";
    public const string SlantedEnds = Goring + ", p. 126";
    public const string Shoulder = Goring + ", p. 111";
    public const string TenonLength = Goring + ", pp. 111 and 113";
    public const string Thirds = Goring + ", p. 112";
    public const string DrawBore = Goring + ", p. 114";
    public const string FourFaces = Goring + ", p. 114";
    public const string Development = Academy + ", art. 27";
    public const string Easing = Academy + ", arts. 28 and 39";
    public const string Corner = Wood + ", plate VI";

    private const string Goring = "Goring, Manual of Purpose-Made Woodworking Joinery";
    private const string Wood = "Wood, Practical Stair Building and Handrailing";
    private const string Academy = "International Correspondence Schools, Stair Building";
}
