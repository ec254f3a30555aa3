using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;
using Rodwright.Geometry;
using Rodwright.Joinery.Strings;

namespace Rodwright.Rod.Views;

/// <summary>What is said of string boards beside the drawing: looked at which way, timber, what is jointed up, ends.</summary>
public static class StringNotes
{
    /// <summary>One short paragraph a line.</summary>
    public static IEnumerable<string> Of(StringView view)
    {
        yield return $"Looked at: face side; up is to the {(view.Sense > 0 ? "right" : "left")}";
        foreach (var board in view.Boards)
        {
            var (part, blank) = (board.Part, board.Part.Blank);
            yield return $"{part.Mark}: board {Sizes(view.Stair.Units, blank.Length, blank.Width)} × {view.Stair.Units.Print(blank.Thickness)} {part.Material}";
            foreach (var piece in blank.JointedUp) yield return $"{part.Mark}{piece.Mark}, {piece.Edge}: {Sizes(view.Stair.Units, piece.Length, piece.Width)}";
        }
        if (view.Boards[0].LeastWidth > 0)
            yield return $"Least width, straight steps: {view.Stair.Units.Print(view.Boards[0].LeastWidth)}";
        var practice = view.Stair.Job.Practice;
        yield return $"Margin {view.Stair.Units.Print(practice.Margin)}, housings {view.Stair.Units.Print(practice.Housing)} deep";
        foreach (var (lower, upper) in view.Boards.Zip(view.Boards.Skip(1)))
            yield return $"Past the corner: {lower.Part.Mark} {view.Stair.Units.Print(lower.Site.Thickness)} through, {upper.Part.Mark} {view.Stair.Units.Print(practice.Corner)} {practice.CornerJoint switch
            {
                CornerJoint.Tongued => "tongued",
                CornerJoint.Dovetailed => $"dovetailed, {Number.Print(lower.Part.Cuts.Count(c => c.Kind == CutKind.Dovetail), 0)} tails",
                _ => "let in",
            }}";
        foreach (var tenon in view.Boards.SelectMany(b => b.Tenons)) yield return TenonWords(view, tenon);
        if (view.Boards.Any(b => b.Tenons.Length > 0))
            yield return $"Bare-faced: cheek off the face side. Pegs {view.Stair.Units.Print(practice.Tenon.Peg)}, draw {view.Stair.Units.Print(practice.Tenon.Draw)} towards the shoulder";
        foreach (var words in Skirtings(view)) yield return words;
        if (view.Boards[0].Easings.Length > 0) yield return "Easings: T tangent, R radius";
        if (view.Boards.Any(b => b.Part.Blank.JointedUp.Length > 0)) yield return "Hatched: jointed up, grain along the board";
    }

    /// <summary>How foot and head meet the skirtings, top edge to top edge.</summary>
    private static IEnumerable<string> Skirtings(StringView view)
    {
        foreach (var board in view.Boards)
            foreach (var words in SkirtingWords.Of(view.Stair, board)) yield return $"{board.Part.Mark}: {words}";
    }

    private static string TenonWords(StringView view, StringTenon tenon)
    {
        var newel = view.Stair.Plan.Newels.First(n => n.Id == tenon.Newel);
        return $"Tenons in {newel.Mark}: {view.Stair.Units.Print(tenon.Length)} long, {view.Stair.Units.Print(tenon.Thickness)} thick, two of {view.Stair.Units.Print(tenon.Third)}, haunch {view.Stair.Units.Print(tenon.Haunch)}";
    }

    private static string Sizes(Units units, double length, double width) => $"{units.Print(length)} × {units.Print(width)}";
}
