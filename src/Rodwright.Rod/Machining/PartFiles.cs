using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Rod.Tables;
using Rodwright.Rod.Templates;

namespace Rodwright.Rod.Machining;

/// <summary>The files a stair's parts are made from.</summary>
public static class PartFiles
{
    /// <summary>A DXF for each mark (W1.dxf), which equal balusters share, then machining.csv, ordinates.csv and parts.csv.</summary>
    public static IReadOnlyList<WrittenFile> Make(RodJob job) => Make(job, MachiningList.Left(job));

    /// <summary>Every file for machine and router: the parts' own, pairs of strings, and jigs.</summary>
    /// <param name="job">The stair.</param>
    /// <param name="left">What the cutter leaves: <see cref="MachiningList.Left"/>.</param>
    public static IReadOnlyList<WrittenFile> All(RodJob job, IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> left)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. Make(job, left), .. PairDxf.Files(job.Stair.Kit, left), .. Jigs.Files(job)];
    }

    /// <inheritdoc cref="Make(RodJob)"/>
    /// <param name="job">The stair.</param>
    /// <param name="left">What the cutter leaves: <see cref="MachiningList.Left"/>.</param>
    public static IReadOnlyList<WrittenFile> Make(RodJob job, IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> left)
    {
        var kit = job.Stair.Kit;
        return
        [
            .. kit.Parts.DistinctBy(p => p.Mark).Select(p => new WrittenFile(p.Mark + ".dxf", DxfFormat.MediaType, DxfWriter.Write(PartDxf.Of(p, kit, left[p.Mark])))),
            MachiningList.File(job, left),
            OrdinateList.File(kit),
            PartsList.File(job.Stair),
        ];
    }
}
