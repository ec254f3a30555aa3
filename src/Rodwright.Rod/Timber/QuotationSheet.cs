using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Timber;

/// <summary>One page for the customer: the stair, what it is made of, and its price. No hours and no margin.</summary>
internal static class QuotationSheet
{
    public static Sheet Make(RodJob rod, BoardPlan plan)
    {
        var words = new SheetWords("quotation", "Quotation", "quotation");
        var start = SheetStart.Written(rod, words, Scale.Full);
        var room = start.Empty.Room;
        var size = start.Lettering.Words * 1.2;
        var marks = new List<Mark>();
        var y = room.MaxY;
        Put(rod.Stair.Job.Title, 1.8 * size, bold: true);
        Put($"Quotation, {rod.Style.Date}. {Sentence.Begin(plan.List.Shop.Name)}", size);
        y -= size;
        var pictures = new CoverPictures(rod.Stair, room.Width, 0.5 * room.Height);
        marks.AddRange(pictures.Draw(new(room.MinX, y - pictures.Height, room.MaxX, y)));
        y -= pictures.Height + 2 * size;
        foreach (var line in Lines(rod, plan)) Put(line, size);
        y -= size;
        Put($"Price: {Costing.Money(plan.List.Shop, Costing.Of(plan).Price)}", 1.8 * size, bold: true);
        return start.Finish(marks);

        void Put(string text, double height, bool bold = false)
        {
            var flow = FlowText.Draw(new(room.MinX, y), room.Width, text, height, bold: bold);
            marks.AddRange(flow.Marks);
            y -= flow.Height + 0.8 * height;
        }
    }

    private static IEnumerable<string> Lines(RodJob rod, BoardPlan plan)
    {
        var (units, kit, job) = (rod.Units, rod.Stair.Kit, rod.Stair.Job);
        var p = kit.Plan;
        yield return $"A stair of {Number.Print(p.Risers, 0)} risers, {SheetStart.HandWords(job)}, for a height of {units.With(p.Risers * p.Rise)}: rise {units.Print(p.Rise)}, going {units.Print(p.Going)}.";
        var pieces = ListedGroup.Of(plan.List).GroupBy(g => (Kind: Plain(g.First.Part.Kind), g.First.Part.Material)).Select(g => (g.Key.Kind, g.Key.Material, Count: g.Sum(x => x.Pieces.Count), Thickness: g.First().First.Part.Blank.Thickness)).ToList();
        yield return "Made of " + string.Join("; ", pieces.Where(x => Name(x.Kind, x.Count).Length > 0).Select(x => $"{Number.Print(x.Count, 0)} {Name(x.Kind, x.Count)} in {x.Material}{(x.Kind == PartKind.Newel ? "" : $" {units.Print(x.Thickness)} thick")}")) + ".";
        yield return $"Set out after {p.Regulation.Title}{(rod.Stair.Regulation.Passes ? "" : "; see the report for what does not keep it")}. Strings housed, wedged and glued; newels morticed, draw-bored and pegged.";
    }

    /// <summary>A customer's words know one kind of riser.</summary>
    private static PartKind Plain(PartKind kind) => kind is PartKind.TaperedRiser or PartKind.BentRiser ? PartKind.Riser : kind;

    private static string Name(PartKind kind, int count) => kind switch
    {
        PartKind.WallString => count == 1 ? "wall string" : "wall strings",
        PartKind.NewelString => count == 1 ? "newel string" : "newel strings",
        PartKind.Newel => count == 1 ? "newel" : "newels",
        PartKind.Tread => count == 1 ? "tread" : "treads",
        PartKind.TaperedTread => count == 1 ? "tapered tread" : "tapered treads",
        PartKind.Riser => count == 1 ? "riser" : "risers",
        PartKind.NosingPiece => count == 1 ? "nosing piece" : "nosing pieces",
        _ => "",
    };
}
