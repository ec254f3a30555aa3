using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Choosing;

/// <summary>The numbers of a person's wishes as they are typed: the ideal of comfort and the weight of each measure.</summary>
public static class WishForm
{
    /// <summary>One number of the wishes.</summary>
    /// <param name="Id">Stable id.</param>
    /// <param name="Title">What it is called.</param>
    /// <param name="Unit">What one of it is, in the unit of a job.</param>
    /// <param name="Least">Least that is taken.</param>
    /// <param name="Most">Most that is taken.</param>
    /// <param name="Get">Reads it.</param>
    /// <param name="Set">Sets it.</param>
    public sealed record Entry(string Id, string Title, Func<Units, string> Unit, double Least, double Most, Func<Wishes, double> Get, Func<Wishes, double, Wishes> Set);

    /// <summary>Every number, the ideal first.</summary>
    public static ImmutableArray<Entry> All { get; } =
    [
        new("comfort-ideal", "Ideal of twice the rise and the going", Ideal, 50, 900, w => w.Comfort, (w, v) => w with { Comfort = v }),
        Weight("comfort", "Comfort", u => $"for every {u.With(60)} off the ideal", w => w.Comfort, (w, v) => w with { Comfort = v }),
        Weight("pitch", "Pitch", _ => "for every 10 degrees above 30", w => w.Pitch, (w, v) => w with { Pitch = v }),
        Weight("headroom", "Headroom", u => $"for {u.With(300)} short of {u.Print(300)} more than is asked", w => w.Headroom, (w, v) => w with { Headroom = v }),
        Weight("floor", "Floor taken", u => u.IsInches ? "for every 21 1/2 square feet" : "for every 2 square metres", w => w.FloorArea, (w, v) => w with { FloorArea = v }),
        Weight("narrowest", "Narrow ends", u => $"for {u.With(100)} short of {u.Print(100)}", w => w.Narrowest, (w, v) => w with { Narrowest = v }),
        Weight("timber", "Timber", u => u.IsInches ? "for every 3 1/2 cubic feet" : "for every tenth of a cubic metre", w => w.Timber, (w, v) => w with { Timber = v }),
        Weight("tapered", "Tapered steps", _ => "for every one", w => w.TaperedSteps, (w, v) => w with { TaperedSteps = v }),
    ];

    /// <summary>A number as it is typed: the ideal in the unit of the job.</summary>
    public static string Shown(Entry entry, Wishes wishes, Units units) => IsLength(entry) && units.IsInches ? units.Typed(units.Stock(entry.Get(wishes))) : Number.Print(entry.Get(wishes), 3);

    /// <summary>Whether a number is a length, typed in the unit of the job.</summary>
    public static bool IsLength(Entry entry) => entry.Unit == Ideal;

    private static string Ideal(Units units) => units.IsInches ? units.Name : units.Id;

    /// <summary>The wishes with one number as it was typed; null with what is wrong with it, in words.</summary>
    public static (Wishes? Wishes, string Refused) Typed(Wishes wishes, Entry entry, string text, Units? told = null)
    {
        var units = IsLength(entry) && told is { IsInches: true } ? told : Units.Millimetres;
        if (!units.TryRead(units.IsInches ? text : text.Trim().Replace(',', '.'), out var value))
            return (null, $"“{text}” is no number");
        return value < entry.Least || value > entry.Most
            ? (null, $"{units.Print(value)} is not between {units.Print(entry.Least)} and {units.Print(entry.Most)}")
            : (entry.Set(wishes, value), "");
    }

    private static Entry Weight(string id, string title, Func<Units, string> unit, Func<RankingWeights, double> get, Func<RankingWeights, double, RankingWeights> set) =>
        new(id, title, unit, 0, 100, w => get(w.Weights), (w, v) => w with { Weights = set(w.Weights, v) });
}
