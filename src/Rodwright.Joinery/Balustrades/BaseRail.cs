using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>
/// A base rail as set out: a band along the string's upper edge (its easings followed) or on a landing's floor, plumb at the newels.
/// </summary>
/// <param name="Rail">The handrail over it.</param>
/// <param name="Under">Its lower edge, in (s, z).</param>
/// <param name="GrooveFloor">The bottom of its groove.</param>
/// <param name="Over">Its upper edge.</param>
internal sealed record BaseRail(RailRun Rail, Path2 Under, Path2 GrooveFloor, Path2 Over)
{
    /// <summary>The base rail under a handrail; null where its string is missing.</summary>
    public static BaseRail? Of(StairPlan plan, RailRun rail, IReadOnlyCollection<StringBoard> boards)
    {
        var practice = plan.Job.Balustrade!;
        Path2 under;
        if (rail.String is null) under = Path2.Polyline(new Point2(rail.From, rail.Floor), new(rail.Face, rail.Floor));
        else if (boards.FirstOrDefault(b => b.Site.Id == rail.String.Id) is { } board) under = board.UpperEdge;
        else return null;
        return new(rail, under, EdgeOffset.Above(under, practice.BaseRail.Height - practice.Groove), EdgeOffset.Above(under, practice.BaseRail.Height)) { Below = UnderString.Of(rail, boards) };
    }

    /// <summary>Its id: that of the handrail over it, as a base rail.</summary>
    public string Id => Rail.Kind == RailKind.Landing ? Rail.Id.Replace("landing-rail", "landing-base", StringComparison.Ordinal) : Rail.Id.Replace("handrail", "base-rail", StringComparison.Ordinal);

    /// <summary>The string above that it may come up to; null for none.</summary>
    public UnderString? Below { get; init; }

    /// <summary>Its outline.</summary>
    public Path2 Outline => Below?.Trim(Under, Over) ?? Between(Under, Over);

    /// <summary>Its groove.</summary>
    public Path2 Groove => Below?.Trim(GrooveFloor, Over) ?? Between(GrooveFloor, Over);

    /// <summary>What lies between two lines, from one x to the other.</summary>
    public static Path2 Between(Path2 low, Path2 high) => new([.. low.Vertices, .. high.Reversed().Vertices], true);

    /// <summary>The piece.</summary>
    public Part Make(StairPlan plan)
    {
        var practice = plan.Job.Balustrade!;
        var (upright, width) = (Upright.Of(Rail), practice.BaseRail.Width);
        return new()
        {
            Id = Id, Name = Rail.Kind == RailKind.Landing ? Rail.Name.Replace("handrail", "base rail", StringComparison.Ordinal) : Rail.Name.Replace("handrail over", "base rail on", StringComparison.Ordinal),
            Mark = (Rail.Kind == RailKind.Landing ? "BL" : "BR") + Rail.Mark[2..], Kind = PartKind.BaseRail, Material = plan.Job.Practice.Timber,
            Blank = upright.Around(Outline, (Under.Vertices[^1].At - Under.Vertices[0].At).Unit, width),
            Faces = [new("face side", upright.Frame(width), upright.On(Outline), width)],
            Cuts = practice.Groove > 0 ? [HandrailMaker.Groove(upright, Groove, width, practice.Baluster)] : [],
        };
    }
}
