using System.Collections.Immutable;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Board;

/// <summary>What goes on a paper.</summary>
/// <param name="Paper">The paper, large sheets lying.</param>
/// <param name="Rod">The largest usual scale at which the rod, plan and wall strings, fits one sheet of it; null when none does.</param>
/// <param name="Strings">What each string takes at true size.</param>
public sealed record PaperFit(PaperStock Paper, Scale? Rod, ImmutableArray<StringPages> Strings)
{
    private const double Breath = 10; // paper round a string at true size, mm

    /// <summary>A4 to A0, then the rolls.</summary>
    public static ImmutableArray<PaperStock> Usual { get; } =
        [.. PaperSize.Series.Select(s => PaperStock.Of(s == PaperSize.A4 ? s : s.Landscape)), PaperStock.Roll610, PaperStock.Roll914];

    /// <summary>Letter, tabloid and architectural sheets, then the rolls (24 and 36 inches).</summary>
    public static ImmutableArray<PaperStock> UsualInches { get; } =
        [.. new[] { "Letter", "Tabloid", "Arch C", "Arch D", "Arch E" }.Select(n => PaperSize.NorthAmerican.First(s => s.Name == n)).Select(s => PaperStock.Of(s.Stands ? s : s.Landscape)), PaperStock.Roll610, PaperStock.Roll914];

    /// <summary>The papers a job of a unit is usually printed on.</summary>
    public static ImmutableArray<PaperStock> UsualIn(Units units) => units.IsInches ? UsualInches : Usual;

    /// <summary>The paper taken where none is named: A3, or tabloid.</summary>
    public static PaperStock Default(Units units) => UsualIn(units)[1];

    /// <summary>What goes on each usual paper, smallest first; each is worked out when it is asked for.</summary>
    /// <param name="rod">The job; its own paper and scale do not matter.</param>
    public static IEnumerable<PaperFit> All(RodJob rod) => UsualIn(rod.Units).Select(paper => Of(rod, paper));

    /// <summary>What goes on one paper.</summary>
    public static PaperFit Of(RodJob rod, PaperStock paper) => new(
        paper, RodSheets.Largest(rod with { Style = rod.Style with { Paper = paper } }),
        [.. rod.Stair.Kit.Strings.Select(s => new StringPages(s.Part.Id, s.Part.Mark, Pages(s.Part, paper)))]);

    private static int Pages(Part part, PaperStock paper)
    {
        // Along its board a string takes the narrowest strip of paper.
        var strip = Box2.Of(part.FaceSide.Outline.Flattened().Select(part.Blank.OnBoard)).Grown(Breath);
        var lying = TrueSizePages.Lying(paper, strip);
        return paper.IsRoll ? lying : Math.Min(lying, TrueSizePages.Lying(paper, new(strip.MinY, strip.MinX, strip.MaxY, strip.MaxX)));
    }
}
