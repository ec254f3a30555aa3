using Rodwright.Drawings.Formats.Models;
using Rodwright.Drawings.Formats.Part21;
using static Rodwright.Drawings.Formats.Part21.Part21File;

namespace Rodwright.Drawings.Formats.Step;

/// <summary>Colours of solids in a STEP file.</summary>
internal static class StepLooks
{
    public static void Add(Part21File file, IReadOnlyList<string> solids, ModelMaterial material, string context)
    {
        var colour = file.Add("COLOUR_RGB", Text(material.Name), Real(material.Red), Real(material.Green), Real(material.Blue));
        var surface = file.Add("SURFACE_STYLE_FILL_AREA", file.Add("FILL_AREA_STYLE", "''", List(file.Add("FILL_AREA_STYLE_COLOUR", "''", colour))));
        var style = file.Add("PRESENTATION_STYLE_ASSIGNMENT", List(file.Add("SURFACE_STYLE_USAGE", ".BOTH.", file.Add("SURFACE_SIDE_STYLE", "''", List(surface)))));
        var styled = solids.Select(s => file.Add("STYLED_ITEM", "''", List(style), s)).ToList();
        file.Add("MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION", "''", List(styled), context);
    }
}
