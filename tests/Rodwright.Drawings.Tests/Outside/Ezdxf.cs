using System.Diagnostics;
using System.Globalization;
using Xunit;

namespace Rodwright.Drawings.Tests.Outside;

/// <summary>The DXF library ezdxf (Debian package python3-ezdxf), run as an independent reader.</summary>
internal static class Ezdxf
{
    private const string Script = """
        import sys, ezdxf
        from ezdxf import bbox
        from ezdxf.lldxf.encoding import decode_dxf_unicode
        for path in sys.argv[1:]:
            doc = ezdxf.readfile(path)
            audit = doc.audit()
            for e in audit.errors: print("error", e.code, e.message)
            for e in audit.fixes: print("fix", e.code, e.message)
            print("units", doc.header["$INSUNITS"], doc.dxfversion)
            for l in doc.layers: print("layer", l.dxf.name, l.dxf.color, l.dxf.lineweight, l.dxf.linetype)
            for e in doc.modelspace():
                k = e.dxftype()
                if k == "LINE": print(k, e.dxf.layer, *e.dxf.start.vec2, *e.dxf.end.vec2)
                elif k == "CIRCLE": print(k, e.dxf.layer, *e.dxf.center.vec2, e.dxf.radius)
                elif k == "LWPOLYLINE": print(k, e.dxf.layer, int(e.closed), *[v for p in e.get_points("xyb") for v in p])
                elif k == "TEXT": print(k, e.dxf.layer, e.dxf.height, e.dxf.rotation, e.dxf.insert.x, e.dxf.insert.y, ascii(decode_dxf_unicode(e.plain_text())))
                elif k == "HATCH": print(k, e.dxf.layer, e.dxf.solid_fill, len(e.paths))
                else: print(k)
            box = bbox.extents(doc.modelspace())
            if box.has_data: print("extents", *box.extmin.vec2, *box.extmax.vec2)
        """;

    /// <summary>The reader's lines about some files, in one go since starting it takes longer than reading.</summary>
    public static IReadOnlyList<string[]> Read(params IReadOnlyList<byte[]> files)
    {
        var folder = Directory.CreateTempSubdirectory("rodwright-");
        try
        {
            var paths = files.Select((bytes, i) =>
            {
                var path = Path.Combine(folder.FullName, $"{i}.dxf");
                File.WriteAllBytes(path, bytes);
                return path;
            }).ToList();
            return [.. Run(paths).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(' '))];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    public static double[] Numbers(IEnumerable<string> words) => [.. words.Select(w => double.Parse(w, CultureInfo.InvariantCulture))];

    private static string Run(IEnumerable<string> paths)
    {
        var complaints = new List<string>();
        // The distribution's python holds the Debian package even where another one comes first in the path.
        foreach (var python in new[] { "python3", "/usr/bin/python3" })
        {
            try
            {
                var start = new ProcessStartInfo(python, ["-c", Script, .. paths]) { RedirectStandardOutput = true, RedirectStandardError = true };
                using var process = Process.Start(start)!;
                var errors = process.StandardError.ReadToEndAsync();
                var output = process.StandardOutput.ReadToEnd();
                process.WaitForExit();
                if (process.ExitCode == 0) return output;
                complaints.Add($"{python}: {errors.Result}");
                if (!errors.Result.Contains("No module named 'ezdxf'", StringComparison.Ordinal)) break;
            }
            catch (System.ComponentModel.Win32Exception missing)
            {
                complaints.Add($"{python}: {missing.Message}");
            }
        }
        Assert.Fail("DXF files cannot be audited: this test needs python3 with ezdxf (Debian: apt-get install python3-ezdxf).\n" + string.Join('\n', complaints));
        return "";
    }
}
