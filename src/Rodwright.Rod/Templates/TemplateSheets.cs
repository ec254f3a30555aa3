using Rodwright.Drawings.Sheets;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Templates;

/// <summary>
/// Full-size sheets: tread and wedge, riser and wedge, pitch board with its margin strip, router jigs, the different ends of newel strings, dovetailed corners, and every tapered tread.
/// The first four kinds are for straight steps; a stair without any has only the others.
/// </summary>
public static class TemplateSheets
{
    /// <summary>The sheets, each on the printer's page where it fits, else larger than that, to be tiled.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        var sheets = new List<Sheet>();
        if (rod.Stair.Kit.Parts.Any(p => p.Kind == PartKind.Tread))
            sheets.AddRange([HousingTemplates.Tread(rod), HousingTemplates.Riser(rod), PitchBoard.Sheet(rod), .. Jigs.Sheets(rod)]);
        sheets.AddRange([.. StringEnds.Sheets(rod), .. CornerEnds.Sheets(rod)]);
        sheets.AddRange(rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread).Select(p => TreadTemplate.Sheet(rod, p)));
        return sheets;
    }
}
