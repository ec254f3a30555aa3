using Rodwright.Geometry;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Shops;

/// <summary>Contradictions between the fields of a shop file, each judged only where its fields were read well.</summary>
internal static class ShopChecks
{
    public static void Apply(JobReading reading, Shop shop)
    {
        var seen = new HashSet<(string, double, double, double)>();
        for (var i = 0; i < shop.Boards.Length; i++)
        {
            var (board, at) = (shop.Boards[i], $"boards[{i}]");
            if (!reading.IsSound(at)) continue;
            if (board is { Price: null, PricePerMetre: null }) reading.Contradict(ShopCodes.NoPrice, at, "the board has no price", "give pricePerMetre, or price for each; 0 for one that costs nothing");
            if (board is { Price: not null, PricePerMetre: not null }) reading.Contradict(ShopCodes.TwoPrices, at, "a price of a metre and a price of each were read; one is taken", "keep the one that is meant");
            foreach (var length in board.Lengths)
                if (!seen.Add((board.Material, board.Thickness, board.Width, length)))
                    reading.Contradict(ShopCodes.SameBoard, at, $"{board.Material} {Number.Exact(board.Thickness)} x {Number.Exact(board.Width)}, {Number.Exact(length)} long, is listed twice", "keep the one that is meant");
        }
        var offcuts = new HashSet<string>();
        for (var i = 0; i < shop.Offcuts.Length; i++)
            if (reading.IsSound($"offcuts[{i}].id") && !offcuts.Add(shop.Offcuts[i].Id))
                reading.Contradict(ShopCodes.SameOffcut, $"offcuts[{i}].id", $"two offcuts are called \"{JsonWords.Shown(shop.Offcuts[i].Id)}\"", "write another number on one of them");
        if (shop.Router.Offset <= 0 && reading.IsSound("router"))
            reading.Contradict(ShopCodes.BushTooNarrow, "router.bush", $"a cutter of {Number.Exact(shop.Router.HandCutter)} does not pass a bush of {Number.Exact(shop.Router.Bush)}", "give the bush's outside, or the hand router's cutter");
        if (!shop.Work.IsEmpty && shop.Rates.Hour == 0 && !reading.IsGiven("rates.hour") && reading.IsSound("rates"))
            reading.Contradict(ShopCodes.NoRate, "rates.hour", "operations are listed, but no price of an hour", "give rates.hour; 0 where work is not to be reckoned");
    }
}
