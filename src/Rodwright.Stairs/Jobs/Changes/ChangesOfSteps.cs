namespace Rodwright.Stairs.Jobs.Changes;

/// <summary>Changes of a layout's sequence that keep a stair's shape: one turn at most, a flight before it and one after it, either possibly of no goings.</summary>
public static class ChangesOfSteps
{
    /// <summary>Flight, turn, flight; a straight flight where there is no turn. Flights of no goings are written as such, so that the places of the items stay.</summary>
    public static FieldChange Sequence(int before, Turn? turn, int after) =>
        FieldChange.ToSequence(turn is null ? [new Flight(before + after)] : [new Flight(before), turn, new Flight(after)]);

    /// <summary>
    /// So many risers in all. Steps are added to the longer flight, or taken from it and then from the other; the turn stays as it is. Null when that cannot be, or changes nothing.
    /// </summary>
    public static FieldChange? Risers(Job job, int risers) =>
        risers == job.Layout.Risers ? null : Filled(job, job.Layout.Turn, risers);

    /// <summary>Another turn, the number of risers kept: the longer flight gives or takes what the turn has more or fewer. Null without a turn, or where the flights cannot give so many.</summary>
    public static FieldChange? Turn(Job job, Turn turn) => job.Layout.Turn is null ? null : Filled(job, turn, job.Layout.Risers);

    /// <summary>A quarter landing, the number of risers kept. Risers fixed by hand are let go: what suits tapered steps does not suit a landing.</summary>
    public static FieldChange? Landing(Job job) => Turn(job, new(TurnKind.Landing, 1, null, null, ""));

    private static FieldChange? Filled(Job job, Turn? turn, int risers)
    {
        var (before, after) = (job.Layout.GoingsBefore, job.Layout.GoingsAfter);
        var more = risers - 1 - before - after - (turn?.Steps ?? 0);
        if (turn is null) return before + more >= 1 ? Sequence(before + more, null, 0) : null;
        if (before + after + more < 0) return null;
        // The turn stays where it is seen from its nearer end.
        if (before > after) (before, after) = before + more >= 0 ? (before + more, after) : (0, after + before + more);
        else (before, after) = after + more >= 0 ? (before, after + more) : (before + after + more, 0);
        return Sequence(before, turn, after);
    }
}
