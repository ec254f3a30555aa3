using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Pictorial;

namespace Rodwright.Rod.Assembly;

/// <summary>A stage of the assembly with its picture: what is there so far faint, what comes heavy, dashed where it is wholly out of sight.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Picture">Its picture.</param>
/// <param name="IsWhole">Whether the eye is where the whole stair is seen from: such pictures lie over one another, and show the stair grow.</param>
public sealed record PicturedStage(AssemblyStage Stage, Picture Picture, bool IsWhole)
{
    // Small pictures need no finer rounds, mm.
    private const double Chord = 0.2;

    /// <summary>The stages of a stair in order.</summary>
    public static ImmutableArray<PicturedStage> Of(Stair stair)
    {
        ArgumentNullException.ThrowIfNull(stair);
        var (solids, whole) = (KitSolids.Of(stair.Kit, Chord).ToDictionary(s => s.Part.Id), Eyes.Whole(stair));
        return [.. AssemblyOrder.Of(stair.Kit).Select(Draw)];

        PicturedStage Draw(AssemblyStage stage)
        {
            var fresh = stage.New.ToHashSet();
            var steps = stage.New.Select(id => solids[id].Part.Step).Where(n => n > 0).ToList();
            var beneath = stage.Where == AssemblyPlace.Shop && steps.Count > 0;
            return new(stage, Picture.Of(stage.Shown.Select(id => solids[id]), beneath ? Eyes.Flight(stair, steps.Min()) : whole, p => fresh.Contains(p.Id)), !beneath);
        }
    }

    /// <summary>The marks.</summary>
    /// <param name="place">Where on the paper.</param>
    public IEnumerable<Mark> Draw(Placement place)
    {
        var here = Stage.New.Concat(Stage.Moved).ToHashSet();
        return Picture.Draw(place, part => !here.Contains(part.Id));
    }
}
