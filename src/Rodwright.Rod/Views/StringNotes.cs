using Rodwright.Geometry;
using Rodwright.Joinery.Strings;

namespace Rodwright.Rod.Views;

/// <summary>What is said of string boards beside the drawing: looked at which way, timber, what is jointed up, ends.</summary>
public static class StringNotes
{
    /// <summary>One short paragraph a line.</summary>
    public static IEnumerable<string> Of(StringView view)
    {
        yield return $"Looked at: face side. Up the stair is to the {(view.Sense > 0 ? "right" : "left")}. Heights from the lower floor.";
        foreach (var board in view.Boards)
        {
            var (part, blank) = (board.Part, board.Part.Blank);
            yield return $"{part.Mark} {part.Name}: board {Sizes(blank.Length, blank.Width)} × {Number.Print(blank.Thickness)} {part.Material}";
            foreach (var piece in blank.JointedUp)
                yield return $"   {part.Mark}{piece.Mark} glued to its {piece.Edge}: {Sizes(piece.Length, piece.Width)}, grain along the board";
        }
        if (view.Boards[0].LeastWidth > 0)
            yield return $"Least width for the straight steps {Number.Print(view.Boards[0].LeastWidth)}";
        var practice = view.Stair.Job.Practice;
        yield return $"Margin {Number.Print(practice.Margin)}. Housings {Number.Print(practice.Housing)} deep, wedge room included";
        if (view.Corner is not null)
            yield return $"{view.Boards[0].Part.Mark} runs through {Number.Print(view.Boards[0].Site.Thickness)} past the corner, {view.Boards[1].Part.Mark} is let in {Number.Print(practice.Corner)} (dashed)";
        foreach (var tenon in view.Boards.SelectMany(b => b.Tenons)) yield return TenonWords(view, tenon);
        if (view.Boards.Any(b => b.Tenons.Length > 0))
            yield return $"Tenons bare-faced: cheek off the face side. Pegs {Number.Print(practice.Tenon.Peg)}, bored {Number.Print(practice.Tenon.Draw)} nearer the shoulder than in the newel";
        if (view.Boards.Any(b => b.Part.Blank.JointedUp.Length > 0)) yield return "Hatched: jointed up. Dashed grey: the board";
    }

    private static string TenonWords(StringView view, StringTenon tenon)
    {
        var newel = view.Stair.Plan.Newels.First(n => n.Id == tenon.Newel);
        return $"Into {newel.Mark} {newel.Name}: tenons {Number.Print(tenon.Length)} long, {Number.Print(tenon.Thickness)} thick, each {Number.Print(tenon.Third)} deep; haunch {Number.Print(tenon.Haunch)}";
    }

    private static string Sizes(double length, double width) => $"{Number.Print(length)} × {Number.Print(width)}";
}
