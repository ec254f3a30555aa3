using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Turns and flights in words.</summary>
public static class TurnWords
{
    /// <summary>"the turn", or of several "the second turn".</summary>
    public static string The(StairPlan plan, TurnPlan turn) => plan.Turns.Length == 1 ? "the turn" : $"the {Ordinal(turn.Index)} turn";

    /// <summary>"the turn newel", or of several "the newel of the second turn", of a half landing's two "the upper newel of the second turn".</summary>
    public static string Newel(StairPlan plan, TurnPlan turn, bool last) => "the " + plan.Newels.First(n => n.Id == turn.Newels[last ? turn.Newels.Length - 1 : 0]).Name;

    /// <summary>"lower flight" and "upper flight" of two, "second flight" of more, "flight" of one.</summary>
    public static string Flight(StairPlan plan, int index) => plan.Flights.Length switch
    {
        1 => "flight",
        2 => index == 0 ? "lower flight" : "upper flight",
        _ => $"{Ordinal(index)} flight",
    };

    /// <summary>"a quarter turn of 3 tapered steps", "a half landing".</summary>
    public static string Kind(Turn turn)
    {
        var part = turn.Quarters == 1 ? "quarter" : "half";
        if (turn.Kind == TurnKind.Landing) return $"a {part} landing";
        var shared = turn.SharedBefore + turn.SharedAfter;
        return $"a {part} turn of {Number.Print(turn.Steps, 0)} tapered steps" + (shared == 0 ? "" : $", its taper shared with {Number.Print(shared, 0)} straight {(shared == 1 ? "step" : "steps")}");
    }

    /// <summary>"first", "second", from 0 on.</summary>
    public static string Ordinal(int index) => index switch
    {
        0 => "first", 1 => "second", 2 => "third", 3 => "fourth", 4 => "fifth", 5 => "sixth",
        _ => Number.Print(index + 1, 0) + "th",
    };
}
