using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Jobs.Changes;

/// <summary>One field of a job given another value. Nothing is judged here: the job file's reader does that when the change is applied.</summary>
/// <param name="Path">As in <see cref="JobFields.Descriptions"/>, for example practice.treadWedge.length; layout.sequence for the whole list; [n] for an item of it.</param>
/// <param name="Json">The value as it would stand in the file, bare numbers of lengths in millimetres whatever the unit of the job; null puts the field back to its default.</param>
public sealed record FieldChange(string Path, string? Json)
{
    /// <summary>Where flights and turns stand.</summary>
    public const string SequencePath = "layout.sequence";

    /// <summary>A number. One that is no number (NaN, infinite) is written so that the reader refuses it.</summary>
    public static FieldChange To(string path, double value) =>
        new(path, double.IsFinite(value) ? JsonValue.Create(value).ToJsonString() : "\"NaN\"");

    /// <summary>A flag.</summary>
    public static FieldChange To(string path, bool value) => new(path, value ? "true" : "false");

    /// <summary>A word or a line of text.</summary>
    public static FieldChange To(string path, string text) => new(path, JsonValue.Create(text).ToJsonString());

    /// <summary>Several numbers: readings of one thing.</summary>
    public static FieldChange ToList(string path, IEnumerable<double> values) => new(path, $"[{string.Join(",", values.Select(v => To(path, v).Json))}]");

    /// <summary>Flights and turns, all of them.</summary>
    public static FieldChange ToSequence(IEnumerable<LayoutItem> items)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartArray();
            foreach (var item in items) ItemReading.Write(json, item);
            json.WriteEndArray();
        }
        return new(SequencePath, Encoding.UTF8.GetString(stream.ToArray()));
    }

    /// <summary>Back to the default; a field without one is left out.</summary>
    public static FieldChange ToDefault(string path) => new(path, null);
}
