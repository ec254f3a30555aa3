using System.Collections.Immutable;

namespace Rodwright.Rod.Board;

/// <summary>What a piece is called.</summary>
internal sealed record PieceName(string Id, string Mark, string Title, BoardPieceKind Kind, ImmutableArray<string> Things);
