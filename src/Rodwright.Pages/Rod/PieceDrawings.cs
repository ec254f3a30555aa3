using System.Text;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Geometry;
using Rodwright.Rod.Board;

namespace Rodwright.Pages.Rod;

/// <summary>The pieces of the board as SVG, each written once for as long as it stays the same piece. For one page's use.</summary>
internal sealed class PieceDrawings
{
    private readonly Dictionary<string, (BoardPiece Piece, string Svg)> finished = [];
    private readonly Dictionary<string, (BoardPiece Piece, string Svg)> stages = [];

    /// <summary>The piece as it is when done.</summary>
    public string Finished(BoardPiece piece) => Known(finished, piece, p => SvgWriter.Fragment(p.Marks, p.Place.Height));

    /// <summary>Its lines, each in a group with its number, to be shown one after the other.</summary>
    public string Stages(BoardPiece piece) => Known(stages, piece, p =>
    {
        var svg = new StringBuilder();
        foreach (var line in p.Lines)
            svg.Append("<g class=\"line ahead\" data-line=\"").Append(Number.Print(line.Number, 0)).Append("\">").Append(SvgWriter.Fragment(line.Marks, p.Place.Height)).Append("</g>");
        return svg.ToString();
    });

    private static string Known(Dictionary<string, (BoardPiece Piece, string Svg)> known, BoardPiece piece, Func<BoardPiece, string> write)
    {
        if (!known.TryGetValue(piece.Id, out var last) || !ReferenceEquals(last.Piece, piece)) known[piece.Id] = last = (piece, write(piece));
        return last.Svg;
    }
}
