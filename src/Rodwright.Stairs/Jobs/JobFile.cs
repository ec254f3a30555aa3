using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Checks;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Jobs;

/// <summary>Reads and writes job files (NAME.stair.json). Text in, text out: files belong to the program.</summary>
public static class JobFile
{
    // Titles stay legible: only what JSON itself demands is escaped.
    internal static JsonWriterOptions Layout { get; } = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>
    /// The job in a text, or everything that is wrong with it, all at once. Never throws, whatever the text. Contradictions between fields are
    /// judged only where each of them was read well.
    /// </summary>
    public static Outcome<Job> Read(string text) => Read(text, null, advise: true, null);

    /// <summary>The same, where the tables a job may name are known: without them a shop's own ones are taken by their name, and missed only when the job is set out.</summary>
    public static Outcome<Job> Read(string text, RegulationShelf shelf) => Read(text, shelf, advise: true, null);

    /// <summary>The same, its findings without remedies that can be pressed: for trials of remedies.</summary>
    internal static Outcome<Job> Draft(string text) => Read(text, null, advise: false, Units.Millimetres);

    /// <summary>A file whose lengths are numbers of millimetres whatever unit it says; text of lengths is in that unit, and so are the findings.</summary>
    internal static Outcome<Job> ReadChanged(string text) => Read(text, null, advise: true, Units.Millimetres);

    private static Outcome<Job> Read(string text, RegulationShelf? shelf, bool advise, Units? numbers)
    {
        var reading = new JobReading(FileKind.Job, shelf);
        Job job;
        using (var document = JobText.Parse(reading, text))
        {
            if (document is null) return Outcome<Job>.Refused(reading.Findings);
            reading.Take(UnitsField.Said(document.RootElement), numbers);
            job = Group.Read(reading, document.RootElement, "", JobFields.BlankIn(reading.Units), JobFields.All);
        }
        job = job with { Sides = SidesOf(job, reading) };
        foreach (var check in JobChecks.All) check.Apply(reading, job);
        SurveyChecks.Apply(reading, job.Survey);
        if (advise && reading.IsRead) reading.Advise(job);
        return reading.Findings.Any(f => f.Severity == Severity.Error) ? Outcome<Job>.Refused(reading.Findings) : Outcome<Job>.Of(job, reading.Findings);
    }

    /// <summary>The job as text that reads back as the same job: every field, defaults too, so that a later change of a default changes no job.</summary>
    public static string Write(Job job) =>
        job.Units == Units.Millimetres ? WriteInMillimetres(job) : Written(LengthsOfFile.In(job.Units, JsonNode.Parse(WriteInMillimetres(job))!));

    /// <summary>The same with every length a number of millimetres, whatever unit it says: the form in which the program changes a job.</summary>
    public static string WriteInMillimetres(Job job)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            json.WriteStartObject();
            foreach (var field in JobFields.All) field.Write(json, job);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static string Written(JsonNode file)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout)) file.WriteTo(json);
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static Sides SidesOf(Job job, JobReading reading)
    {
        var usual = Sides.For(job.Layout.Hand);
        return new(reading.IsGiven("sides.left") ? job.Sides.Left : usual.Left, reading.IsGiven("sides.right") ? job.Sides.Right : usual.Right);
    }
}
