using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>Words flowed into lines of a width.</summary>
/// <param name="Marks">The lines, top first.</param>
/// <param name="Height">From the top of the first line's capitals to the foot of the last line, room for descenders included, mm.</param>
public sealed record FlowText(IReadOnlyList<Mark> Marks, double Height)
{
    /// <summary>Distance from one line to the next, in heights of the capitals.</summary>
    public const double Pitch = 1.75;

    /// <summary>The share of the capitals' height that descenders need below the line.</summary>
    public const double Descent = 0.35;

    /// <summary>Flows words; line breaks in the text start a new line.</summary>
    /// <param name="topLeft">Top of the first line's capitals, at their left.</param>
    /// <param name="width">Longest line, mm.</param>
    /// <param name="text">The words.</param>
    /// <param name="height">Of the capitals, mm.</param>
    /// <param name="layer">What they mean; lettering when null.</param>
    /// <param name="bold">Heavier letters.</param>
    public static FlowText Draw(Point2 topLeft, double width, string text, double height = 2.5, Layer? layer = null, bool bold = false)
    {
        var marks = new List<Mark>();
        var lines = Wrap(text, width, height, bold);
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].Length == 0) continue;
            marks.Add(new TextMark(new(topLeft.X, topLeft.Y - height - i * Pitch * height), lines[i], height, layer ?? Layer.Lettering, bold: bold));
        }
        return new(marks, HeightOf(lines.Count, height));
    }

    /// <summary>Height of so many lines, mm.</summary>
    public static double HeightOf(int lines, double height) => lines == 0 ? 0 : height * (1 + (lines - 1) * Pitch + Descent);

    /// <summary>The lines of a text in a width; a word longer than a line is broken where the line ends. Feet, inches and fraction of one figure stay together.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width, double height, bool bold = false)
    {
        var lines = new List<string>();
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            var line = "";
            foreach (var word in Words(paragraph))
            {
                var longer = line.Length == 0 ? word : line + " " + word;
                if (Lettering.Width(longer, height, bold) <= width)
                {
                    line = longer;
                    continue;
                }
                if (line.Length > 0) lines.Add(line);
                line = word;
                while (line.Length > 1 && Lettering.Width(line, height, bold) > width)
                {
                    var n = line.Length - 1;
                    while (n > 1 && Lettering.Width(line.AsSpan(0, n), height, bold) > width) n--;
                    // A figure of feet and inches that is too long after all is broken between its parts.
                    if (line.LastIndexOf(' ', n) is > 0 and var gap) (line, n) = (line.Remove(gap, 1), gap);
                    lines.Add(line[..n]);
                    line = line[n..];
                }
            }
            lines.Add(line);
        }
        return lines;
    }

    private static IEnumerable<string> Words(string paragraph)
    {
        var figure = "";
        foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (figure.Length > 0 && !GoesOn(figure, word))
            {
                yield return figure;
                figure = "";
            }
            figure = figure.Length == 0 ? word : figure + " " + word;
        }
        if (figure.Length > 0) yield return figure;
    }

    /// <summary>9' 1, and 1 3/4": 1 is not read without its foot, nor 3/4 without its inch.</summary>
    private static bool GoesOn(string figure, string word) => char.IsAsciiDigit(word[0])
        && ((figure[^1] == '\'' && figure.Length > 1 && char.IsAsciiDigit(figure[^2])) || (char.IsAsciiDigit(figure[^1]) && word.Contains('/', StringComparison.Ordinal) && word.Contains('"', StringComparison.Ordinal)));
}
