using System.Text;
using Rodwright.Testing;

namespace Rodwright.Pages.Tests.Shelf;

/// <summary>Files that are no jobs, each with a word its refusal must have.</summary>
internal static class BadFiles
{
    /// <summary>By name: what is in it.</summary>
    public static IReadOnlyDictionary<string, byte[]> All { get; } = Make();

    private static Dictionary<string, byte[]> Make()
    {
        var good = Samples.Text("left-kite-low");
        var files = new Dictionary<string, byte[]>
        {
            ["empty"] = [],
            ["one space"] = " "u8.ToArray(),
            ["a NUL"] = [0],
            ["a picture"] = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13],
            ["a zip"] = [0x50, 0x4B, 3, 4, 20, 0, 0, 0],
            ["a PDF"] = "%PDF-1.7\n%\u00e2\u00e3"u8.ToArray(),
            ["UTF-16"] = Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(good)).ToArray(),
            ["Latin-1 accents"] = Encoding.Latin1.GetBytes(good.Replace("Larkmoor", "Lärkmoor")),
            ["half a surrogate"] = Text(good.Replace("Larkmoor Barn", "\\ud800")),
            ["overlong UTF-8"] = [.. "{\"title\":\""u8, 0xC0, 0xAF, .. "\"}"u8],
            ["a web page"] = "<html><script>alert(1)</script></html>"u8.ToArray(),
            ["XML"] = "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><a>&b;</a>"u8.ToArray(),
            ["a list"] = "[]"u8.ToArray(),
            ["a number"] = "42"u8.ToArray(),
            ["a word"] = "\"stair\""u8.ToArray(),
            ["null"] = "null"u8.ToArray(),
            ["nothing in it"] = "{}"u8.ToArray(),
            ["two jobs"] = Text(good + good),
            ["a comment"] = Text("// a stair\n" + good),
            ["a trailing comma"] = Text(good.TrimEnd().TrimEnd('}') + ",}"),
            ["single quotes"] = Text(good.Replace('"', '\'')),
            ["deep lists"] = Text(new string('[', 20_000) + new string(']', 20_000)),
            ["deep groups"] = Text(string.Concat(Enumerable.Repeat("{\"a\":", 10_000)) + "1" + new string('}', 10_000)),
            ["deep in a known field"] = Text(good.Replace("\"going\": 225", "\"going\": " + new string('[', 500) + new string(']', 500))),
            ["a huge number"] = Text(good.Replace("225", "1e999")),
            ["a number without end"] = Text(good.Replace("225", new string('9', 5000))),
            ["NaN"] = Text(good.Replace("225", "NaN")),
            ["Infinity"] = Text(good.Replace("225", "Infinity")),
            ["a negative going"] = Text(good.Replace("225", "-225")),
            ["a going of nothing"] = Text(good.Replace("225", "0")),
            ["a going in words"] = Text(good.Replace("225", "\"nine inches\"")),
            ["a going that is null"] = Text(good.Replace("225", "null")),
            ["a going that is a list"] = Text(good.Replace("\"going\": 225", "\"going\": [225]")),
            ["a going twice"] = Text(good.Replace("\"going\": 225", "\"going\": 225, \"going\": 230")),
            ["an unknown field"] = Text(good.Replace("\"going\": 225", "\"going\": 225, \"owner\": \"admin\"")),
            ["__proto__"] = Text(good.Replace("\"going\": 225", "\"going\": 225, \"__proto__\": {\"admin\": true}")),
            ["a type field"] = Text(good.Replace("\"going\": 225", "\"$type\": \"System.Diagnostics.Process\", \"going\": 225")),
            ["another version"] = Text(good.Replace("\"rodwright\": 1", "\"rodwright\": 99")),
            ["no version"] = Text(good.Replace("\"rodwright\": 1,", "")),
            ["a version in words"] = Text(good.Replace("\"rodwright\": 1", "\"rodwright\": \"1\"")),
            ["an unknown regulation"] = Text(good.Replace("england-2013-private", "england-1666-private")),
            ["a regulation that is a path"] = Text(good.Replace("england-2013-private", "../../../etc/passwd")),
            ["a regulation of markup"] = Text(good.Replace("england-2013-private", "<img src=x onerror=alert(1)>")),
            ["no title"] = Text(good.Replace("\"title\": \"Larkmoor Barn, stair to the loft room\",", "")),
            ["an empty title"] = Text(good.Replace("Larkmoor Barn, stair to the loft room", "")),
            ["a title of spaces"] = Text(good.Replace("Larkmoor Barn, stair to the loft room", "   ")),
            ["a title too long"] = Text(good.Replace("Larkmoor Barn", new string('x', 500))),
            ["a title with a NUL"] = Text(good.Replace("Larkmoor Barn", "Lark\\u0000moor")),
            ["a title with a line break"] = Text(good.Replace("Larkmoor Barn", "Lark\\nmoor")),
            ["a title that is a number"] = Text(good.Replace("\"Larkmoor Barn, stair to the loft room\"", "7")),
            ["a title that is a group"] = Text(good.Replace("\"Larkmoor Barn, stair to the loft room\"", "{\"a\": 1}")),
            ["no survey"] = Text(good.Replace("\"survey\": { \"floorToFloor\": [2598, 2601, 2601] },", "")),
            ["a survey without readings"] = Text(good.Replace("[2598, 2601, 2601]", "[]")),
            ["a survey of a thousand readings"] = Text(good.Replace("[2598, 2601, 2601]", "[" + string.Join(',', Enumerable.Repeat(2600, 1000)) + "]")),
            ["readings far apart"] = Text(good.Replace("2598", "2500")),
            ["readings in words"] = Text(good.Replace("[2598, 2601, 2601]", "[\"2598\", true]")),
            ["a height of a tower"] = Text(good.Replace("[2598, 2601, 2601]", "[999999]")),
            ["no steps"] = Text(good.Replace("[{ \"flight\": 2 }, { \"turn\": \"winders\", \"steps\": 3 }, { \"flight\": 7 }]", "[]")),
            ["a million steps"] = Text(good.Replace("\"flight\": 7", "\"flight\": 1000000")),
            ["steps of a fraction"] = Text(good.Replace("\"flight\": 7", "\"flight\": 7.5")),
            ["fewer than no steps"] = Text(good.Replace("\"flight\": 7", "\"flight\": -7")),
            ["a turn of no kind"] = Text(good.Replace("\"winders\"", "\"corkscrew\"")),
            ["a turn of a hundred steps"] = Text(good.Replace("\"steps\": 3", "\"steps\": 100")),
            ["flight and turn in one"] = Text(good.Replace("{ \"flight\": 2 }", "{ \"flight\": 2, \"turn\": \"winders\" }")),
            ["ten thousand flights"] = Text(good.Replace("{ \"flight\": 2 }", string.Join(',', Enumerable.Repeat("{ \"flight\": 1 }", 10_000)))),
            ["a hand of neither"] = Text(good.Replace("\"hand\": \"left\"", "\"hand\": \"both\"")),
            ["practice that is a list"] = Text(good.Replace("\"width\": 860", "\"width\": 860, \"practice\": []")),
            ["a newel of nothing"] = Text(good.Replace("\"width\": 860", "\"width\": 860, \"practice\": {\"newel\": 0}")),
            ["a housing deeper than the board"] = Text(good.Replace("\"width\": 860", "\"width\": 860, \"practice\": {\"housing\": 400}")),
            ["a field of practice that is none"] = Text(good.Replace("\"width\": 860", "\"width\": 860, \"practice\": {\"newell\": 90}")),
        };
        foreach (var part in new[] { 1, 10, 40, 120, 200 }) files[$"cut off after {part}"] = Text(good[..part]);
        return files;

        static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);
    }
}
