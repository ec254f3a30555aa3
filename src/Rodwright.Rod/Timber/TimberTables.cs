using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Tables;
using Rodwright.Stairs.Shops;

namespace Rodwright.Rod.Timber;

/// <summary>Cutting list, board plan and costing as tables.</summary>
public static class TimberTables
{
    /// <summary>The cutting list: equal pieces on one line, glued-up ones with each strip below.</summary>
    public static TimberTable List(CuttingList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var units = list.Kit.Plan.Units;
        var rows = new List<IReadOnlyList<string>>();
        foreach (var group in ListedGroup.Of(list))
        {
            var (part, first) = (group.First.Part, group.First);
            rows.Add([group.Marks, group.Name, Number.Print(group.Pieces.Count, 0), part.Material, .. Sizes(units, part.Blank.Length, part.Blank.Width, part.Blank.Thickness),
                .. first.IsGluedUp ? ["", "", ""] : Sawn(units, first.Woods[0], first.Stock), first.Grain, first.Remark]);
            if (!first.IsGluedUp) continue;
            foreach (var (wood, count) in group.Strips)
                rows.Add(["", "  " + Strip(first, wood), Number.Print(count, 0), wood.Material, .. Sizes(units, wood.Length, wood.Width, wood.Thickness), .. Sawn(units, wood, first.Stock), first.Grain, ""]);
        }
        return new("cutting-list", "Cutting list",
            ["Mark", "Piece", "No.", "Material", "Length", "Width", "Thick", "Sawn length", "Sawn width", "Ex", "Grain", "Remarks"], rows, [2, 4, 5, 6, 7, 8, 9]);
    }

    /// <summary>What is counted: wedges, blocks, pegs, screws.</summary>
    public static TimberTable Counts(CuttingList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var shown = ShopFields.Counted.Where(c => c is "tread-wedge" or "riser-wedge" or "glue-block" or "peg" or "screw");
        return new("fixings", "Fixings", ["Fixing", "No."], [.. shown.Select(c => (IReadOnlyList<string>)[c.Replace('-', ' ') + "s", Number.Print(list.Counts.GetValueOrDefault(c), 0)])], [1]);
    }

    /// <summary>The board plan: a line for each strip of each board, its pieces in the order they are cut.</summary>
    public static TimberTable Boards(BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (units, shop) = (plan.List.Kit.Plan.Units, plan.List.Shop);
        var rows = new List<IReadOnlyList<string>>();
        foreach (var board in plan.Boards)
        {
            for (var i = 0; i < board.Strips.Length; i++)
            {
                var strip = board.Strips[i];
                rows.Add([
                    i == 0 ? Number.Print(board.Number, 0) : "", i == 0 ? StockName(units, board) : "", i == 0 ? units.Print(board.Length) : "", !board.IsRipped ? "whole" : units.Print(strip.Width),
                    string.Join(" · ", strip.Cuts.Select(c => $"{c.Wood.Id} {units.Print(c.Wood.SawnLength)}{(c.Nested.IsEmpty ? "" : " slanted")}")), units.Print(strip.Left), i == 0 ? board.IsBought ? Costing.Money(shop, board.Price) : "offcut" : ""]);
            }
        }
        return new("board-plan", "Board plan", ["Board", "Stock", "Length", "Strip", "Cuts, in order", "Left", "Price"], rows, [0, 2, 5, 6]);
    }

    /// <summary>The costing, each amount with how it came about.</summary>
    public static TimberTable Costs(BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var costing = Costing.Of(plan);
        return new("costing", "Costing", ["Group", "What", "How it is worked out", "Amount"],
            [.. costing.Lines.Select(l => (IReadOnlyList<string>)[l.Group, l.What, l.Formula, Costing.Money(plan.List.Shop, l.Amount)])], [3]);
    }

    /// <summary>"redwood 25 x 150", or which offcut it is.</summary>
    public static string StockName(Units units, PlannedBoard board)
    {
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(board);
        return $"{board.Material} {units.Print(board.Thickness)} × {units.Print(board.Width)}" + (board.IsBought ? "" : $", offcut {board.Offcut}");
    }

    private static string[] Sizes(Units units, double length, double width, double thickness) => [units.Print(length), units.Print(width), units.Print(thickness)];

    private static string[] Sawn(Units units, Wood wood, StockKind stock) => stock is StockKind.Scrap ? ["", "", ""] : [units.Print(wood.SawnLength), units.Print(wood.SawnWidth), units.Print(wood.SawnThickness)];

    /// <summary>What a strip or layer of a glued-up piece is called: "strip a", "jointed up 1", "layer b".</summary>
    public static string Strip(ListedPiece piece, Wood wood)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(wood);
        var letter = wood.Id[piece.Part.Mark.Length..];
        return letter.StartsWith('+') ? $"jointed up {letter[1..]}" : piece.Part.Kind == PartKind.Block ? $"layer {letter}" : $"strip {letter}";
    }
}
