using System.Collections.Immutable;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Assembly;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Assembly;

/// <summary>The order of assembly as a page shows it. Immutable.</summary>
/// <param name="Stair">The stair.</param>
/// <param name="Cautions">Said once, before all stages.</param>
/// <param name="Stages">The stages in order.</param>
public sealed record AssemblyBench(Stair Stair, ImmutableArray<string> Cautions, ImmutableArray<StageCard> Stages)
{
    private static readonly Box2 Paper = new(0, 0, 120, 84);
    private const double Edge = 2;

    /// <summary>The stages of a stair, drawn at one scale; up to a second's work.</summary>
    public static AssemblyBench Of(Stair stair)
    {
        ArgumentNullException.ThrowIfNull(stair);
        var stages = PicturedStage.Of(stair);
        var room = Paper.Grown(-Edge);
        var scale = Scale.OneTo(Math.Max(1, stages.Max(s => Math.Max(s.Picture.Bounds.Width / room.Width, s.Picture.Bounds.Height / room.Height))));
        var grown = stages.Where(s => s.IsWhole).Aggregate(Box2.Empty, (box, s) => box.With(s.Picture.Bounds));
        return new(stair, [.. AssemblyWords.Cautions(stair.Kit)], [.. stages.Select((s, i) => new StageCard(i + 1, s.Stage, Parts(stair, s.Stage),
            new(Paper.Width, Paper.Height, [.. s.Draw(Placement.Centred(s.IsWhole ? grown : s.Picture.Bounds, room, scale))])))]);
    }

    /// <summary>What is taken in hand: what is fitted for good, and the strings and newels that are brought; of the dry fit, which takes all there is, none is named.</summary>
    private static ImmutableArray<Part> Parts(Stair stair, AssemblyStage stage) => stage.New.IsEmpty && stage.Before.IsEmpty ? []
        : [.. stage.New.Concat(stage.Moved).Select(stair.Kit.Find).Where(p => stage.New.Contains(p.Id) || p.Kind is PartKind.WallString or PartKind.NewelString or PartKind.Newel).DistinctBy(p => p.Mark)];
}

/// <summary>A stage, drawn.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Stage">The stage.</param>
/// <param name="Parts">What is taken in hand, one part for each mark, in the order they are taken up.</param>
/// <param name="Picture">What is there so far faint, what comes heavy; all stages at one scale.</param>
public sealed record StageCard(int Number, AssemblyStage Stage, ImmutableArray<Part> Parts, Picture Picture);
