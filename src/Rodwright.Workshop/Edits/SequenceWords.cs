using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Edits;

/// <summary>Flights and turns as people read them: "2 steps, 3 tapered, 7 steps". Different sequences have different words.</summary>
public static class SequenceWords
{
    /// <summary>A layout's sequence, from the bottom up; its hand is not told.</summary>
    public static string Of(Layout layout) => string.Join(", ", layout.Sequence.Select(Of));

    /// <summary>One flight or turn.</summary>
    public static string Of(LayoutItem item) => item switch
    {
        Flight { Goings: 1 } => "1 step",
        Flight flight => $"{Number.Print(flight.Goings, 0)} steps",
        Turn { Kind: TurnKind.Landing } turn => "quarter landing" + Details(turn, ""),
        Turn turn => $"{Number.Print(turn.Tapered, 0)} tapered" + Details(turn, turn.Method == TurnCatalogue.Winders[0].Id ? "" : turn.Method),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Details(Turn turn, string method)
    {
        var details = new List<string>();
        if (method.Length > 0) details.Add(method);
        if (turn.FirstRiser is { } first) details.Add($"first riser {Number.Exact(first)}");
        if (turn.LastRiser is { } last) details.Add($"last riser {Number.Exact(last)}");
        return details.Count == 0 ? "" : $" ({string.Join("; ", details)})";
    }
}
