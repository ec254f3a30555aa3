using Rodwright.Stairs.Findings;

namespace Rodwright.Output;

/// <summary>Prints findings the way a compiler prints its own: file, kind, code, where, what, and what would help.</summary>
internal static class FindingText
{
    public static void Write(TextWriter to, string file, IEnumerable<Finding> findings)
    {
        foreach (var f in findings.OrderByDescending(f => f.Severity))
        {
            to.WriteLine($"{file}: {Word(f.Severity)} {f.Code}: {f.Where}: {f.Message}");
            if (f.Hint.Length > 0) to.WriteLine($"    what would help: {f.Hint}");
        }
    }

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Breach => "breach",
        Severity.Advice => "advice",
        _ => "note",
    };
}
