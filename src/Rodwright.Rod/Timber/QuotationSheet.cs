using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Timber;

/// <summary>One page for the customer: the stair as it will stand, what it is made of, and its price. No hours and no margin.</summary>
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
        // The pictures take what the words leave.
        var said = QuotationWords.Of(rod, plan).ToList();
        var price = $"Price: {Costing.Money(plan.List.Shop, Costing.Of(plan).Price)}";
        var below = said.Sum(line => HeightOf(line, size, false)) + HeightOf(price, 1.8 * size, true) + HeightOf(QuotationWords.Terms, size, false) + 3 * size;
        var box = new Box2(room.MinX, room.MinY + below, room.MaxX, y - size);
        marks.AddRange(QuotationPictures.Draw(rod.Stair, box));
        y = box.MinY - size;
        foreach (var line in said) Put(line, size);
        y -= size;
        Put(price, 1.8 * size, bold: true);
        Put(QuotationWords.Terms, size);
        return start.Finish(marks);

        void Put(string text, double height, bool bold = false)
        {
            var flow = FlowText.Draw(new(room.MinX, y), room.Width, text, height, bold: bold);
            marks.AddRange(flow.Marks);
            y -= flow.Height + 0.8 * height;
        }

        double HeightOf(string text, double height, bool bold) => FlowText.Draw(new(room.MinX, 0), room.Width, text, height, bold: bold).Height + 0.8 * height;
    }
}
