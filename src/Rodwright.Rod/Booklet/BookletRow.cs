using Rodwright.Geometry;
using Rodwright.Rod.Stages;

namespace Rodwright.Rod.Booklet;

/// <summary>One numbered step of a stage: a line, or lines found alike, told once with a table of their distances.</summary>
/// <param name="Number">From 1 in its stage.</param>
/// <param name="What">What to do.</param>
/// <param name="Why">Why.</param>
/// <param name="Heads">Heads of the table, the first for the lines' names; empty for none.</param>
/// <param name="Entries">Its entries, each with its name first.</param>
/// <param name="Lines">The lines it draws.</param>
internal sealed record BookletRow(
    string Number, string What, string Why, IReadOnlyList<string> Heads, IReadOnlyList<string[]> Entries, IReadOnlyList<StageLine> Lines)
{
    public static IReadOnlyList<BookletRow> Of(Stage stage, Units units)
    {
        var rows = new List<BookletRow>();
        foreach (var lines in Together(stage))
        {
            var number = Geometry.Number.Print(rows.Count + 1, 0);
            if (lines.Count == 1 || lines[0].Telling is not { } once)
            {
                rows.Add(new(number, lines[0].Instruction.What(units), lines[0].Instruction.Reason, [], [], lines));
                continue;
            }
            var figures = lines.Select(l => l.Instruction.Measures.Select(m => m.Figure(units)).ToArray()).ToList();
            var alike = figures.TrueForAll(f => f.SequenceEqual(figures[0]));
            rows.Add(new(number, Sentence(once.What), Sentence(once.Why),
                alike ? [] : [Singular(once.Lines), .. lines[0].Instruction.Measures.Select(m => m.Label)],
                alike ? [] : [.. lines.Select((l, i) => (string[])[ShortName.Of(l), .. figures[i]])], lines));
        }
        return rows;
    }

    /// <summary>Lines in the order they are drawn, those told once together at the place of the first.</summary>
    private static IEnumerable<IReadOnlyList<StageLine>> Together(Stage stage)
    {
        var told = new HashSet<string>();
        foreach (var line in stage.Lines)
        {
            if (line.Telling is null) yield return [line];
            else if (told.Add(line.Telling.Id)) yield return [.. stage.Lines.Where(l => l.Telling?.Id == line.Telling.Id)];
        }
    }

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..] + ".";

    private static string Singular(string lines) => lines.Split(' ')[0] switch
    {
        "riser" or "risers" => "riser",
        "level" => "level",
        "corners" => "corner",
        "faces" => "face",
        _ => "piece",
    };
}
