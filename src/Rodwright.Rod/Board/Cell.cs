namespace Rodwright.Rod.Board;

/// <summary>What a piece or a block of them takes of the board, gap included, mm.</summary>
internal readonly record struct Cell(double Width, double Height);
