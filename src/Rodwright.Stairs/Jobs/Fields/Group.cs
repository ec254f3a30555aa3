using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Reads and describes the fields of one object: repeated, unknown and missing ones are found here.</summary>
internal static class Group
{
    /// <summary>The owner with every field that could be read; fields already dealt with are passed over.</summary>
    public static T Read<T>(JobReading reading, JsonElement json, string path, T owner, ImmutableArray<Field<T>> fields, HashSet<string>? dealtWith = null, HashSet<string>? optional = null) where T : class
    {
        var names = fields.Select(f => f.Name).ToArray();
        if (!reading.IsKind(json, JsonValueKind.Object, path, JobCodes.GroupWanted, "a group of fields in braces", "its fields: " + string.Join(", ", names)))
            return owner;
        var seen = new HashSet<string>();
        var refusedTwice = new HashSet<string>();
        foreach (var property in json.EnumerateObject())
        {
            if (dealtWith?.Contains(property.Name) == true) continue;
            var where = Join(path, JsonWords.Shown(property.Name));
            var field = fields.FirstOrDefault(f => f.Name == property.Name);
            if (!seen.Add(property.Name))
            {
                if (refusedTwice.Add(property.Name))
                    reading.Refuse(JobCodes.Repeated, where, $"\"{JsonWords.Shown(property.Name)}\" stands here more than once; each field stands once", "keep the one that is meant and take the others out");
            }
            else if (field is null)
            {
                reading.Refuse(JobCodes.Unknown, where, $"there is no field \"{JsonWords.Shown(property.Name)}\" here; known: {string.Join(", ", names)}", Meant(json, property.Name, fields) ?? KnownElsewhere(reading.Kind, property.Name, path, names));
            }
            else
            {
                reading.Give(where);
                owner = field.Read(reading, property.Value, where, owner);
            }
        }
        foreach (var field in fields)
        {
            if (field.Required && !seen.Contains(field.Name) && optional?.Contains(field.Name) != true)
                reading.Refuse(JobCodes.Missing, Join(path, field.Name), $"the {field.Label} is missing", field.Source);
        }
        return owner;
    }

    /// <summary>Writes type, properties and required names of an object's schema.</summary>
    public static void WriteSchema<T>(Utf8JsonWriter json, T defaults, ImmutableArray<Field<T>> fields) where T : class
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (var field in fields)
        {
            json.WritePropertyName(field.Name);
            field.WriteSchema(json, defaults);
        }
        json.WriteEndObject();
        if (fields.Any(f => f.Required))
        {
            json.WriteStartArray("required");
            foreach (var field in fields.Where(f => f.Required)) json.WriteStringValue(field.Name);
            json.WriteEndArray();
        }
        json.WriteBoolean("additionalProperties", false);
    }

    /// <summary>A field's path under its group's.</summary>
    public static string Join(string path, string name) => path.Length == 0 ? name : path + "." + name;

    /// <summary>A field that is left out and called by what was written: "number" for the number or name of the clause. Null where several are, or none.</summary>
    private static string? Meant<T>(JsonElement json, string written, ImmutableArray<Field<T>> fields) where T : class
    {
        if (NearestName.To(written, fields.Select(f => f.Name)) is not null) return null;
        var called = fields.Where(f => !json.TryGetProperty(f.Name, out _)).Select(f => (Field: f, At: Array.IndexOf(f.Label.Split(' '), written))).Where(f => f.At >= 0).OrderBy(f => f.At).ToList();
        if (called.Count == 0 || (called.Count > 1 && called[0].At == called[1].At)) return null;
        return $"did you mean {called[0].Field.Name}, the {called[0].Field.Label}?";
    }

    private static string KnownElsewhere(FileKind kind, string name, string path, string[] names)
    {
        if (NearestName.To(name, names) is { } near) return $"did you mean {near}?";
        foreach (var description in kind.Fields())
        {
            var dot = description.Path.LastIndexOf('.');
            if (description.Path[(dot + 1)..] == name) return $"{name} belongs {(dot < 0 ? "at the top of the file" : "in " + description.Path[..dot])}";
        }
        return path.Length == 0 ? "take it out" : $"take it out of {path}";
    }
}
