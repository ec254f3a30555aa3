using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Rod.Stages;

namespace Rodwright.Rod.Board;

/// <summary>One line of the rod's stages, drawn on its piece.</summary>
/// <param name="Number">Its place in the whole walk, from 1.</param>
/// <param name="StageId">The stage it belongs to.</param>
/// <param name="Line">The line with its instruction.</param>
/// <param name="Marks">Its strokes, in the piece's paper mm.</param>
public sealed record BoardLine(int Number, string StageId, StageLine Line, ImmutableArray<Mark> Marks);
