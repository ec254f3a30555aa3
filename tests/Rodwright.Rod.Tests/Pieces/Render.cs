using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Machining;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Templates;
using Xunit;
using Rodwright.Testing;

namespace Rodwright.Rod.Tests.Pieces;

public sealed class Render
{
    [Fact]
    public void All()
    {
        var folder = Environment.GetEnvironmentVariable("RENDER");
        if (folder is null) return;
        foreach (var sample in Samples.Names)
            foreach (var paper in new[] { "A4", "A3", "A1" })
            {
                var rod = RodJobs.Of(sample, paper);
                var dir = Path.Combine(folder, sample + "-" + paper); Directory.CreateDirectory(dir);
                var set = new SheetSet("pieces", "p", PieceSheets.Make(rod).Concat(TemplateSheets.Make(rod)));
                foreach (var f in FormatCatalogue.Find("svg")!.Write(set).Concat(PartFiles.Make(rod)))
                    File.WriteAllBytes(Path.Combine(dir, f.Name), f.Bytes.ToArray());
            }
    }
}
