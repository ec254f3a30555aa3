using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>
/// The unit of every length of the file. It is looked up before any field is read, wherever it stands; written only where it is not millimetres, so that a metric job's file stays as it was.
/// </summary>
internal sealed class UnitsField() : Field<Job>("units", "unit of the lengths", Meaning, required: false)
{
    private const string Meaning = "mm, or inches: then every length is a number of inches, or text as the trade writes it: \"9' 1 3/4\", \"10-1/4\", \"1 1/8\"";

    private static ImmutableArray<string> Words { get; } = [Units.Millimetres.Id, Units.Inches.Id];

    private readonly ChoiceField<Job> choice = new("units", "unit of the lengths", Words, JobCodes.UnitsWord, "unit", Meaning,
        j => j.Units.Id, (j, v) => j with { Units = Units.Of(v)! }, help: "write mm or inches");

    /// <summary>The unit a file says; millimetres where it says none, or none that is known.</summary>
    public static Units Said(JsonElement file) =>
        file.ValueKind == JsonValueKind.Object && file.TryGetProperty("units", out var said) && said.ValueKind == JsonValueKind.String && Units.Of(said.GetString()!) is { } units ? units : Units.Millimetres;

    public override Job Read(JobReading reading, JsonElement json, string path, Job owner) => choice.Read(reading, json, path, owner);

    public override void Write(Utf8JsonWriter json, Job owner)
    {
        if (owner.Units != Units.Millimetres) choice.Write(json, owner);
    }

    public override void WriteSchema(Utf8JsonWriter json, Job defaults) => choice.WriteSchema(json, LeftOut(defaults));

    public override IEnumerable<FieldDescription> Describe(string path, Job defaults) => choice.Describe(path, LeftOut(defaults));

    /// <summary>What is taken where the file says none, whatever else a job in inches takes.</summary>
    private static Job LeftOut(Job defaults) => defaults with { Units = Units.Millimetres };
}
