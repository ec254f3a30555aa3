namespace Rodwright.Stairs.Jobs.Changes;

/// <summary>Changes of a layout's sequence that keep a stair's shape: flights give and take steps, turns stay in their order.</summary>
public static class ChangesOfSteps
{
    /// <summary>The sequence of a course.</summary>
    public static FieldChange Sequence(Course course) => FieldChange.ToSequence(course.Items);

    /// <summary>Flight, turn, flight; a straight flight where there is no turn.</summary>
    public static FieldChange Sequence(int before, Turn? turn, int after) =>
        FieldChange.ToSequence(turn is null ? [new Flight(before + after)] : [new Flight(before), turn, new Flight(after)]);

    /// <summary>
    /// So many risers in all. Steps are added to the longest flight, or taken from it and then from the next; the turns stay as they are. Null when that cannot be, or changes nothing.
    /// </summary>
    public static FieldChange? Risers(Job job, int risers) =>
        risers == job.Layout.Risers ? null : Filled(Course.Of(job.Layout), risers);

    /// <summary>Another turn in place of one, the number of risers kept: the longest flight gives or takes what the turn has more or fewer. Null where the flights cannot give so many.</summary>
    public static FieldChange? Turn(Job job, int index, Turn turn)
    {
        var course = Course.Of(job.Layout);
        return index >= course.Turns.Length ? null : Filled(course with { Turns = course.Turns.SetItem(index, turn) }, job.Layout.Risers);
    }

    /// <summary>A landing in place of a turn, the number of risers kept. Risers fixed by hand are let go: what suits tapered steps does not suit a landing.</summary>
    public static FieldChange? Landing(Job job, int index)
    {
        var course = Course.Of(job.Layout);
        if (index >= course.Turns.Length) return null;
        var turn = course.Turns[index];
        return Turn(job, index, new(TurnKind.Landing, 1, null, null, "") { Hand = turn.Hand, Quarters = turn.Quarters });
    }

    private static FieldChange? Filled(Course course, int risers)
    {
        var more = risers - 1 - course.Steps;
        var goings = course.Goings.ToArray();
        if (course.Turns.IsEmpty ? goings[0] + more < 1 : goings.Sum() + more < 0) return null;
        while (more != 0)
        {
            // The turns stay where they are seen from the nearer end of the stair: the longest flight changes, of equal ones the upper.
            var longest = Array.LastIndexOf(goings, goings.Max());
            var change = more > 0 ? more : Math.Max(more, -goings[longest]);
            goings[longest] += change;
            more -= change;
        }
        return Sequence(course with { Goings = [.. goings] });
    }
}
