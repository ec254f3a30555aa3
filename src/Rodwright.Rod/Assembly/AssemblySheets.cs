using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Assembly;

/// <summary>The order of assembly, each stage with a small picture: what is there so far faint, what comes heavy, dashed where it is wholly out of sight.</summary>
public static class AssemblySheets
{
    /// <summary>The sheets: one, or more where the stages do not fit it.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        var kit = rod.Stair.Kit;
        var stages = PicturedStage.Of(rod.Stair);
        var words = new SheetWords("assembly", "Order of assembly", "order of assembly and fitting");
        var flow = new SheetFlow(SheetStart.Written(rod, words, Scale.Full));
        var (width, height) = (stages.Max(s => s.Picture.Bounds.Width), stages.Max(s => s.Picture.Bounds.Height));
        var scales = SheetScales.RoomFrom(null, rod.Units).ToList();
        var scale = scales.Find(s => width * s.Factor <= flow.Width - 4 && height * s.Factor <= 0.36 * flow.Width) ?? scales[^1];
        flow = new(SheetStart.Written(rod, words, scale));
        flow.Heading("Before it is put together", 12 * flow.Height);
        foreach (var caution in AssemblyWords.Cautions(kit)) flow.Paragraph(caution);
        foreach (var (i, pictured) in stages.Index())
        {
            var (stage, bounds) = (pictured.Stage, pictured.Picture.Bounds);
            var deep = bounds.Height * scale.Factor + 2;
            flow.Heading($"{Number.Print(i + 1, 0)}. {stage.Title} ({(stage.Where == AssemblyPlace.Shop ? "shop" : "site")})", deep + 4 * flow.Height);
            flow.Picture(deep, box => pictured.Draw(Placement.Centred(bounds, box, scale)));
            flow.Paragraph(stage.Words);
        }
        return flow.Sheets();
    }
}
