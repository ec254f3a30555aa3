using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Machining;

/// <summary>The files a stair's parts are made from.</summary>
public static class PartFiles
{
    /// <summary>A DXF for each mark (W1.dxf), which equal balusters share, then ordinates.csv and parts.csv.</summary>
    public static IReadOnlyList<WrittenFile> Make(RodJob job)
    {
        var kit = job.Stair.Kit;
        return
        [
            .. kit.Parts.DistinctBy(p => p.Mark).Select(p => new WrittenFile(p.Mark + ".dxf", DxfFormat.MediaType, DxfWriter.Write(PartDxf.Of(p, kit)))),
            OrdinateList.File(kit),
            PartsList.File(job.Stair),
        ];
    }
}
