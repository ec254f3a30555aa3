using System.Collections.Immutable;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Stages;

namespace Rodwright.Rod.Board;

/// <summary>What every piece of a board is drawn with.</summary>
/// <param name="Stair">The stair.</param>
/// <param name="Scale">Timber to paper.</param>
/// <param name="Stages">The stages' lines by the piece they are drawn on, numbered through.</param>
internal sealed record BoardBench(Stair Stair, Scale Scale, IReadOnlyDictionary<string, ImmutableArray<(int Number, Stage Stage, StageLine Line)>> Stages)
{
    /// <summary>The board hangs over the bench.</summary>
    public SheetLettering Lettering => new(3.5, 5, 10, 7) { Units = Stair.Units };
}
