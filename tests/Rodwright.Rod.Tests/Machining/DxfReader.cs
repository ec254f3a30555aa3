using System.Diagnostics;
using System.Globalization;
using Rodwright.Drawings.Formats;
using Rodwright.Geometry;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>DXF files read and audited by ezdxf (Debian package python3-ezdxf), an independent reader.</summary>
internal static class DxfReader
{
    private const string Script = """
        import sys, ezdxf
        for path in sys.argv[1:]:
            doc = ezdxf.readfile(path)
            audit = doc.audit()
            print("file", path)
            for e in list(audit.errors) + list(audit.fixes): print("error", e.code, e.message)
            for e in doc.modelspace():
                k = e.dxftype()
                if k == "LINE": print("path", e.dxf.layer, 0, e.dxf.start.x, e.dxf.start.y, 0, e.dxf.end.x, e.dxf.end.y, 0)
                elif k == "CIRCLE": print("circle", e.dxf.layer, e.dxf.center.x, e.dxf.center.y, e.dxf.radius)
                elif k == "LWPOLYLINE": print("path", e.dxf.layer, int(e.closed), *[v for p in e.get_points("xyb") for v in p])
                elif k != "TEXT": print("other", k)
        """;

    /// <summary>One file as the reader sees it.</summary>
    public sealed record Drawing(List<string> Errors, List<(string Layer, Path2 Path)> Paths);

    /// <summary>Reads files in one go, since starting the reader takes longer than reading.</summary>
    public static IReadOnlyDictionary<string, Drawing> Read(IEnumerable<WrittenFile> files)
    {
        var folder = Directory.CreateTempSubdirectory("rodwright-");
        try
        {
            var paths = new List<string>();
            foreach (var file in files)
            {
                paths.Add(Path.Combine(folder.FullName, file.Name));
                File.WriteAllBytes(paths[^1], file.Bytes.ToArray());
            }
            var found = new Dictionary<string, Drawing>();
            Drawing? now = null;
            foreach (var words in Run(paths).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(' ')))
            {
                if (words[0] == "file") found[Path.GetFileName(words[1])] = now = new([], []);
                else if (words[0] is "error" or "other") now!.Errors.Add(string.Join(' ', words));
                else if (words[0] == "circle") now!.Paths.Add((words[1], Path2.Circle(new(Real(words[2]), Real(words[3])), Real(words[4]))));
                else now!.Paths.Add((words[1], new(words.Skip(3).Select(Real).Chunk(3).Select(v => new Vertex2(new(v[0], v[1]), v[2])), words[2] == "1")));
            }
            return found;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static double Real(string word) => double.Parse(word, CultureInfo.InvariantCulture);

    private static string Run(IReadOnlyList<string> paths)
    {
        var complaints = "";
        // The distribution's python holds the Debian package even where another one comes first in the path.
        foreach (var python in new[] { "python3", "/usr/bin/python3" })
        {
            using var process = Process.Start(new ProcessStartInfo(python, ["-c", Script, .. paths]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (process.ExitCode == 0) return output;
            complaints += $"{python}: {errors.Result}\n";
        }
        Assert.Fail("DXF files cannot be audited: this test needs python3 with ezdxf (Debian: apt-get install python3-ezdxf).\n" + complaints);
        return "";
    }
}
