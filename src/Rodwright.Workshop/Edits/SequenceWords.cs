using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Edits;

/// <summary>Flights and turns as people read them: "2 steps, 3 tapered, 7 steps". Different sequences have different words.</summary>
public static class SequenceWords
{
    /// <summary>A layout's sequence, from the bottom up; its hand is not told.</summary>
    public static string Of(Layout layout, Units? units = null) => string.Join(", ", layout.Sequence.Select(i => Of(i, units)));

    /// <summary>One flight or turn.</summary>
    public static string Of(LayoutItem item, Units? units = null) => item switch
    {
        Flight flight => (flight.Goings == 1 ? "1 step" : $"{Number.Print(flight.Goings, 0)} steps") + Sides(flight),
        Turn { Kind: TurnKind.Landing } turn => (turn.Quarters == 1 ? "quarter landing" : "half landing") + Details(turn, "", units),
        Turn turn => $"{Number.Print(turn.Tapered, 0)} tapered{(turn.Quarters == 1 ? "" : " in a half turn")}" + Details(turn, turn.Method == TurnCatalogue.Winders[0].Id ? "" : turn.Method, units),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Details(Turn turn, string method, Units? told)
    {
        var units = told ?? Units.Millimetres;
        var details = new List<string>();
        if (turn.Hand is { } hand) details.Add(hand == Hand.Left ? "to the left" : "to the right");
        if (method.Length > 0) details.Add(method);
        if (turn.SharedBefore > 0) details.Add($"{Number.Print(turn.SharedBefore, 0)} shared before");
        if (turn.SharedAfter > 0) details.Add($"{Number.Print(turn.SharedAfter, 0)} shared after");
        if (turn.Well is { } well) details.Add($"well {units.Typed(well)}");
        if (turn.FirstRiser is { } first) details.Add($"first riser {units.Typed(first)}");
        if (turn.LastRiser is { } last) details.Add($"last riser {units.Typed(last)}");
        return details.Count == 0 ? "" : $" ({string.Join("; ", details)})";
    }

    private static string Sides(Flight flight)
    {
        var sides = new List<string>();
        if (flight.Left is { } left) sides.Add(left == SideKind.Wall ? "left walled" : "left open");
        if (flight.Right is { } right) sides.Add(right == SideKind.Wall ? "right walled" : "right open");
        return sides.Count == 0 ? "" : $" ({string.Join("; ", sides)})";
    }
}
