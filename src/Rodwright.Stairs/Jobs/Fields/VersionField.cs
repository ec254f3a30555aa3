using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The version of the job file's form: always 1 here, and kept in no property.</summary>
internal sealed class VersionField() : Field<Job>(
    "rodwright", "version of the job file", "\"rodwright\": 1 says that this is a job file and how to read it", required: true)
{
    /// <summary>The version read and written.</summary>
    private const int Version = 1;

    public override Job Read(JobReading reading, JsonElement json, string path, Job owner)
    {
        const string hint = "write \"rodwright\": 1";
        if (reading.IsKind(json, JsonValueKind.Number, path, JobCodes.NumberWanted, "the number 1", hint) && (!json.TryGetDouble(out var value) || value != Version))
            reading.Refuse(JobCodes.Version, path, $"a job file of version {JsonWords.Shown(json.GetRawText())} was read; version 1 is known", hint + ", or use the release that wrote the file");
        return owner;
    }

    public override void Write(Utf8JsonWriter json, Job owner) => json.WriteNumber(Name, Version);

    public override void WriteSchema(Utf8JsonWriter json, Job defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteNumber("const", Version);
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, Job defaults) =>
        [new(path, Label, "", Version, Version, null, [], true, Source)];
}
