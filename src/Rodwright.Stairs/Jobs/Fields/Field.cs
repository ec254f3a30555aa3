using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>
/// One field of a job file, described once beside the typed property it sets: reader, writer, schema, guide and forms all come from here.
/// </summary>
/// <typeparam name="T">The record the field belongs to.</typeparam>
internal abstract class Field<T>(string name, string label, string source, bool required) where T : class
{
    /// <summary>Its name in the file.</summary>
    public string Name { get; } = name;

    /// <summary>Its name in the trade's words.</summary>
    public string Label { get; } = label;

    /// <summary>What it means and where its default comes from.</summary>
    public string Source { get; } = source;

    /// <summary>Whether a job without it is refused.</summary>
    public bool Required { get; } = required;

    /// <summary>The owner with the value read; the owner unchanged when it was refused.</summary>
    public abstract T Read(JobReading reading, JsonElement json, string path, T owner);

    /// <summary>Writes name and value; nothing when there is no value.</summary>
    public abstract void Write(Utf8JsonWriter json, T owner);

    /// <summary>Writes the schema of the value, without the name.</summary>
    public abstract void WriteSchema(Utf8JsonWriter json, T defaults);

    /// <summary>The descriptions of the field, or of the fields it groups.</summary>
    public abstract IEnumerable<FieldDescription> Describe(string path, T defaults);

    /// <summary>Writes title and description of the schema.</summary>
    protected void WriteWords(Utf8JsonWriter json)
    {
        json.WriteString("title", Label);
        json.WriteString("description", Source);
    }
}
