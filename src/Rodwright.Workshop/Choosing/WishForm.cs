using System.Collections.Immutable;
using System.Globalization;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Choosing;

/// <summary>The numbers of a person's wishes as they are typed: the ideal of comfort and the weight of each measure.</summary>
public static class WishForm
{
    /// <summary>One number of the wishes.</summary>
    /// <param name="Id">Stable id.</param>
    /// <param name="Title">What it is called.</param>
    /// <param name="Unit">What one of it is.</param>
    /// <param name="Least">Least that is taken.</param>
    /// <param name="Most">Most that is taken.</param>
    /// <param name="Get">Reads it.</param>
    /// <param name="Set">Sets it.</param>
    public sealed record Entry(string Id, string Title, string Unit, double Least, double Most, Func<Wishes, double> Get, Func<Wishes, double, Wishes> Set);

    /// <summary>Every number, the ideal first.</summary>
    public static ImmutableArray<Entry> All { get; } =
    [
        new("comfort-ideal", "Ideal of twice the rise and the going", "mm", 50, 900, w => w.Comfort, (w, v) => w with { Comfort = v }),
        Weight("comfort", "Comfort", "for every 60 mm off the ideal", w => w.Comfort, (w, v) => w with { Comfort = v }),
        Weight("pitch", "Pitch", "for every 10 degrees above 30", w => w.Pitch, (w, v) => w with { Pitch = v }),
        Weight("headroom", "Headroom", "for 300 mm short of 300 more than is asked", w => w.Headroom, (w, v) => w with { Headroom = v }),
        Weight("floor", "Floor taken", "for every 2 square metres", w => w.FloorArea, (w, v) => w with { FloorArea = v }),
        Weight("narrowest", "Narrow ends", "for 100 mm short of 100", w => w.Narrowest, (w, v) => w with { Narrowest = v }),
        Weight("timber", "Timber", "for every tenth of a cubic metre", w => w.Timber, (w, v) => w with { Timber = v }),
        Weight("tapered", "Tapered steps", "for every one", w => w.TaperedSteps, (w, v) => w with { TaperedSteps = v }),
    ];

    /// <summary>The wishes with one number as it was typed; null with what is wrong with it, in words.</summary>
    public static (Wishes? Wishes, string Refused) Typed(Wishes wishes, Entry entry, string text)
    {
        if (!double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            return (null, $"“{text}” is no number");
        return value < entry.Least || value > entry.Most
            ? (null, $"{Number.Print(value)} is not between {Number.Print(entry.Least)} and {Number.Print(entry.Most)}")
            : (entry.Set(wishes, value), "");
    }

    private static Entry Weight(string id, string title, string unit, Func<RankingWeights, double> get, Func<RankingWeights, double, RankingWeights> set) =>
        new(id, title, unit, 0, 100, w => get(w.Weights), (w, v) => w with { Weights = set(w.Weights, v) });
}
