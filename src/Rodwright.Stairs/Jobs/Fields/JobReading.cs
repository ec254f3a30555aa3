using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>One reading of one job file: what was found so far, which fields were given and which cannot be trusted.</summary>
internal sealed class JobReading(FileKind kind, RegulationShelf? shelf = null)
{
    private readonly List<Finding> findings = [];
    private readonly HashSet<string> refused = [];
    private readonly HashSet<string> given = [];
    private readonly List<(int At, ImmutableArray<Way> Ways)> ways = [];

    /// <summary>What the text is read as.</summary>
    public FileKind Kind { get; } = kind;

    /// <summary>The tables a job may name; null where a shop's own ones are not known, and any is taken by its name.</summary>
    public RegulationShelf? Shelf { get; } = shelf;

    /// <summary>The unit of the file: text of lengths is read in it, and findings tell lengths in it.</summary>
    public Units Units { get; private set; } = Units.Millimetres;

    /// <summary>What bare numbers of lengths are counted in: the file's unit, or millimetres where the program itself changed the job.</summary>
    public Units Numbers { get; private set; } = Units.Millimetres;

    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>Takes the unit the file says.</summary>
    public void Take(Units units, Units? numbers = null) => (Units, Numbers) = (units, numbers ?? units);

    public void Give(string path) => given.Add(path);

    public bool IsGiven(string path) => given.Contains(path);

    /// <summary>Refuses a field: what was read of it cannot be compared with others.</summary>
    public void Refuse(string code, string where, string message, string hint)
    {
        Contradict(code, where, message, hint);
        refused.Add(where);
    }

    /// <summary>Keeps a field that was not asked for from being compared with others.</summary>
    public void Withhold(string path) => refused.Add(path);

    /// <summary>Refuses a job whose fields, each in order, contradict one another. Hides no other contradiction: all are reported at once.</summary>
    public void Contradict(string code, string where, string message, string hint, params ImmutableArray<Way> ways)
    {
        if (!ways.IsEmpty) this.ways.Add((findings.Count, ways));
        findings.Add(new(code, Severity.Error, where, message, hint));
    }

    /// <summary>Whether every field was read well.</summary>
    public bool IsRead => refused.Count == 0;

    /// <summary>Tries what would free each contradiction: afterwards it is gone, and nothing else stands against the job that did not before.</summary>
    public void Advise(Job job)
    {
        foreach (var (at, tries) in ways)
            findings[at] = findings[at] with { Remedies = [.. tries.Select(w => w.First(r => Frees(job, findings[at], r))).OfType<Remedy>().DistinctBy(r => r.Words)] };
    }

    private bool Frees(Job job, Finding finding, Remedy remedy) => JobChanges.Draft(job, remedy.Changes) is var changed
        && changed.Findings.Where(f => f.Severity == Severity.Error).All(f => f.Code != finding.Code && findings.Any(old => old.Code == f.Code && old.Where == f.Where));

    public void Note(string code, string where, string message, string hint) =>
        findings.Add(new(code, Severity.Note, where, message, hint));

    /// <summary>Whether fields were read well, so that they may be compared with others: a refusal of a group spoils its fields, and the other way round.</summary>
    public bool IsSound(params ReadOnlySpan<string> paths)
    {
        foreach (var path in paths)
        {
            foreach (var bad in refused) if (Touches(path, bad) || Touches(bad, path)) return false;
        }
        return true;
    }

    /// <summary>Refuses null, and anything else of the wrong kind under the code of the kind that was wanted.</summary>
    public bool IsKind(JsonElement json, JsonValueKind wanted, string path, string code, string words, string hint)
    {
        if (json.ValueKind == wanted) return true;
        if (json.ValueKind == JsonValueKind.Null) Refuse(JobCodes.Null, path, $"null was read; {words} is wanted", "leave the field out to take its default, or " + hint);
        else Refuse(code, path, $"{JsonWords.Kind(json)} was read; {words} is wanted", hint);
        return false;
    }

    private static bool Touches(string path, string whole) =>
        path.StartsWith(whole, StringComparison.Ordinal) && (path.Length == whole.Length || path[whole.Length] is '.' or '[');
}
