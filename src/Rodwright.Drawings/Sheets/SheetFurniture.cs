using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>What every sheet carries beside its drawing.</summary>
internal static class SheetFurniture
{
    /// <summary>Boxes inside the frame that the furniture takes.</summary>
    public static ImmutableArray<Box2> Reserved(Sheet sheet)
    {
        if (sheet.Block is null) return [];
        var block = TitleBlock.BoxOf(sheet.Paper);
        return sheet.TrueSize ? [block, .. CheckBar.BoxesOn(sheet)] : [block];
    }

    /// <summary>Frame, title block and, on a true-size sheet, the check bars.</summary>
    public static IReadOnlyList<Mark> Draw(Sheet sheet)
    {
        if (sheet.Block is null) return [];
        var marks = new List<Mark>();
        marks.AddRange(SheetFrame.Draw(sheet.Paper));
        marks.AddRange(TitleBlock.Draw(sheet));
        if (sheet.TrueSize) marks.AddRange(CheckBar.DrawOn(sheet));
        return marks;
    }
}
