using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Pictorial;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Assembly;

/// <summary>The order of assembly, each stage with a small picture: what is there so far faint, what comes heavy, dashed where it is wholly out of sight.</summary>
public static class AssemblySheets
{
    // Small pictures need no finer rounds, mm.
    private const double Chord = 0.2;

    /// <summary>The sheets: one, or more where the stages do not fit it.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        var (kit, view) = (rod.Stair.Kit, Eyes.Whole(rod.Stair));
        var solids = KitSolids.Of(kit, Chord).ToDictionary(s => s.Part.Id);
        var stages = AssemblyOrder.Of(kit);
        var pictures = stages.Select(Draw).ToList();
        var words = new SheetWords("assembly", "Order of assembly", "order of assembly and fitting");
        var flow = new SheetFlow(SheetStart.Written(rod, words, Scale.Full));
        var (width, height) = (pictures.Max(p => p.Bounds.Width), pictures.Max(p => p.Bounds.Height));
        var scales = SheetScales.RoomFrom(null, rod.Units).ToList();
        var scale = scales.Find(s => width * s.Factor <= flow.Width - 4 && height * s.Factor <= 0.36 * flow.Width) ?? scales[^1];
        flow = new(SheetStart.Written(rod, words, scale));
        flow.Heading("Before it is put together", 12 * flow.Height);
        foreach (var caution in AssemblyWords.Cautions(kit)) flow.Paragraph(caution);
        for (var i = 0; i < stages.Length; i++)
        {
            var (stage, picture) = (stages[i], pictures[i]);
            var deep = picture.Bounds.Height * scale.Factor + 2;
            var fresh = stage.New.Concat(stage.Moved).ToHashSet();
            flow.Heading($"{Number.Print(i + 1, 0)}. {stage.Title} ({(stage.Where == AssemblyPlace.Shop ? "shop" : "site")})", deep + 4 * flow.Height);
            flow.Picture(deep, box => picture.Draw(Placement.Centred(picture.Bounds, box, scale), part => !fresh.Contains(part.Id)));
            flow.Paragraph(stage.Words);
        }
        return flow.Sheets();

        Picture Draw(AssemblyStage stage)
        {
            var fresh = stage.New.ToHashSet();
            var steps = stage.New.Select(id => solids[id].Part.Step).Where(n => n > 0).ToList();
            var eye = stage.Where == AssemblyPlace.Shop && steps.Count > 0 ? Eyes.Flight(rod.Stair, steps.Min()) : view;
            return Picture.Of(stage.Shown.Select(id => solids[id]), eye, p => fresh.Contains(p.Id));
        }
    }
}
