using System.Diagnostics;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Machining;
using Rodwright.Testing;
using UglyToad.PdfPig;
using Xunit;

namespace Rodwright.Tests.Packs;

/// <summary>A second program opens the parts' DXF files: LibreCAD (Debian's package librecad), which draws each of them on paper.</summary>
public class SecondProgramTests
{
    public static TheoryData<string> SampleNames => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(SampleNames))]
    public void Every_part_is_opened_and_drawn(string name)
    {
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        var files = PartFiles.Make(new RodJob(stair, stair.Prove(), new RodStyle(PaperStock.Of(PaperSize.A3.Landscape), null, "2026-03-02")))
            .Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal)).ToList();
        var folder = Directory.CreateTempSubdirectory("rodwright-dxf-");
        try
        {
            foreach (var file in files) File.WriteAllBytes(Path.Combine(folder.FullName, file.Name), file.Bytes.ToArray());
            Draw(folder.FullName, files.Select(f => f.Name));
            foreach (var file in files)
            {
                var drawn = Path.Combine(folder.FullName, Path.ChangeExtension(file.Name, ".pdf"));
                Assert.True(File.Exists(drawn), $"{file.Name} was not drawn");
                using var pdf = PdfDocument.Open(drawn);
                // Outline, blank and marking at the least, as lines on the paper.
                Assert.True(pdf.GetPage(1).Paths.Count >= 3, $"{file.Name}: {pdf.GetPage(1).Paths.Count} paths drawn");
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Draw(string folder, IEnumerable<string> files)
    {
        var start = new ProcessStartInfo("librecad") { WorkingDirectory = folder, RedirectStandardError = true, RedirectStandardOutput = true };
        start.Environment["QT_QPA_PLATFORM"] = "offscreen";
        start.Environment["XDG_RUNTIME_DIR"] = folder;
        foreach (var argument in new[] { "dxf2pdf", "-a", "-c" }.Concat(files)) start.ArgumentList.Add(argument);
        Process? process = null;
        try
        {
            process = Process.Start(start);
        }
        catch (System.ComponentModel.Win32Exception e)
        {
            Assert.Fail("LibreCAD is needed for this test (Debian's package librecad): " + e.Message);
        }
        var error = process!.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(120_000), "LibreCAD did not finish");
        Assert.True(process.ExitCode == 0, error.Result);
    }
}
