using System.Text;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Part21;

/// <summary>A file of numbered entities as ISO 10303-21 sets them down: the clear text that both STEP and IFC are written in.</summary>
internal sealed class Part21File
{
    private readonly StringBuilder data = new();
    private readonly string header;
    private int last;

    /// <summary>An empty file.</summary>
    /// <param name="name">Its name, told in its header.</param>
    /// <param name="date">The day it is made, told in its header.</param>
    /// <param name="schema">Of the entities: "IFC4".</param>
    /// <param name="view">What part of the schema is exchanged, in the header's words.</param>
    public Part21File(string name, DateOnly date, string schema, string view) => header = string.Join('\n',
        "ISO-10303-21;", "HEADER;", $"FILE_DESCRIPTION(({Text(view)}),'2;1');",
        $"FILE_NAME({Text(name)},'{date.ToString("O", null)}T00:00:00',(''),(''),'Rodwright','Rodwright','');", $"FILE_SCHEMA(({Text(schema)}));", "ENDSEC;", "DATA;", "");

    /// <summary>Adds an entity: its name and values, set down already. Its reference, "#12".</summary>
    public string Add(string entity, params ReadOnlySpan<string> values) => AddWhole(entity + "(" + string.Join(',', values) + ")");

    /// <summary>Adds an entity that is several at once: "(LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.))".</summary>
    public string AddWhole(string whole)
    {
        var reference = "#" + Number.Print(++last, 0);
        data.Append(reference).Append('=').Append(whole).Append(";\n");
        return reference;
    }

    /// <summary>The file's bytes, plain ASCII.</summary>
    public byte[] Bytes() => Encoding.ASCII.GetBytes(header + data + "ENDSEC;\nEND-ISO-10303-21;\n");

    /// <summary>Values in brackets.</summary>
    public static string List(params IEnumerable<string> values) => "(" + string.Join(',', values) + ")";

    /// <summary>A real number, which always has its point; to a millionth of a millionth.</summary>
    public static string Real(double value)
    {
        var text = Number.Print(value, 12);
        return text.Contains('.', StringComparison.Ordinal) ? text : text + ".";
    }

    /// <summary>Words in quotes; letters outside plain ASCII are set down by their code, as the standard's 6.4.3 has it.</summary>
    public static string Text(string words)
    {
        var text = new StringBuilder("'");
        var coded = false;
        foreach (var c in words)
        {
            if (c is >= ' ' and <= '~' != !coded)
            {
                text.Append(coded ? @"\X0\" : @"\X2\");
                coded = !coded;
            }
            if (coded) text.Append(((int)c).ToString("X4", System.Globalization.CultureInfo.InvariantCulture));
            else text.Append(c switch { '\'' => "''", '\\' => @"\\", _ => c.ToString() });
        }
        if (coded) text.Append(@"\X0\");
        return text.Append('\'').ToString();
    }
}
