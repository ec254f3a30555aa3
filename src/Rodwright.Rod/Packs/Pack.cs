using System.Collections.Immutable;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Formats.Tables;
using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Booklet;
using Rodwright.Rod.Machining;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Templates;

namespace Rodwright.Rod.Packs;

/// <summary>Everything a stair is made from: the set of sheets, the true-size templates, and the files of the parts.</summary>
/// <param name="Set">Cover, plan, strings, newels, steps, ordinates, lists.</param>
/// <param name="TrueSize">Full-size templates, cut into tiles where the paper is smaller.</param>
/// <param name="Parts">DXF for each part, for pairs of strings and for router jigs, what the cutter leaves, ordinates and parts list as CSV.</param>
/// <param name="Booklet">The rod step by step, for who sets it out by hand; null when it was not asked for.</param>
public sealed record Pack(SheetSet Set, SheetSet TrueSize, ImmutableArray<WrittenFile> Parts, SheetSet? Booklet = null)
{
    /// <summary>What the machine's cutter leaves, by the mark of the part.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> Left { get; init; } = ImmutableDictionary<string, IReadOnlyList<LeftByCutter>>.Empty;

    /// <summary>Draws the pack.</summary>
    /// <param name="rod">The stair and how to print it.</param>
    /// <param name="progress">Told, in words, what is being drawn; null for silence.</param>
    /// <param name="booklet">Whether to draw the step-by-step booklet as well.</param>
    public static Pack Draw(RodJob rod, IProgress<string>? progress = null, bool booklet = false)
    {
        progress?.Report("drawing plan and strings");
        List<Sheet> sheets = [.. StairSheets.Make(rod)];
        progress?.Report("drawing newels and steps");
        sheets.AddRange(PieceSheets.Make(rod));
        progress?.Report("following the cutter");
        var left = MachiningList.Left(rod);
        sheets.AddRange(MachiningSheets.Make(rod, left));
        progress?.Report("drawing the cover");
        var set = new SheetSet("set", rod.Stair.Job.Title, [.. Cover.Make(rod, sheets), .. sheets]);
        progress?.Report("drawing templates");
        var trueSize = new SheetSet("true-size", rod.Stair.Job.Title + ", templates at true size", TrueSizePages.Of(TemplateSheets.Make(rod), rod.Style.Paper));
        if (booklet) progress?.Report("drawing the booklet");
        return new(set, trueSize, [.. PartFiles.All(rod, left)],
            booklet ? new("booklet", rod.Stair.Job.Title + ", step by step", BookletSheets.Make(rod)) : null) { Left = left };
    }

    /// <summary>
    /// The pack as files, with what else belongs in its folder: paths with forward slashes: two PDFs (three with the booklet), an SVG for each sheet, DXF for parts, pairs and jigs, CSV tables, and the list of them all.
    /// </summary>
    public ImmutableArray<WrittenFile> Write(IEnumerable<WrittenFile> others, IProgress<string>? progress = null)
    {
        progress?.Report("writing PDF, SVG and CSV");
        var jobs = new Func<IEnumerable<WrittenFile>>[]
        {
            () => new PdfFormat().Write(Set),
            () => new PdfFormat().Write(TrueSize),
            () => new SvgFormat().Write(Set).Select(In("svg")),
            () => Booklet is null ? [] : new PdfFormat().Write(Booklet),
        };
        var written = new IEnumerable<WrittenFile>[jobs.Length];
        Parallel.For(0, jobs.Length, i => written[i] = jobs[i]().ToList());
        List<WrittenFile> files = [.. written.SelectMany(w => w), .. Parts.Select(p => p.Name.EndsWith(".dxf", StringComparison.Ordinal) ? In("dxf")(p) : p), .. others];
        files.Add(CsvWriter.WriteFile("contents", ["file", "what", "title", "scale", "paper"], Contents(files)));
        return [.. files];
    }

    private IEnumerable<IReadOnlyList<string>> Contents(List<WrittenFile> files)
    {
        var sheets = Set.Sheets.ToDictionary(s => $"svg/{s.Name}.svg");
        foreach (var file in files)
        {
            yield return sheets.TryGetValue(file.Name, out var sheet)
                ? [file.Name, "sheet", sheet.Title, sheet.ScaleWords, sheet.Paper.Name]
                : [file.Name, file.Name[(file.Name.LastIndexOf('.') + 1)..].ToUpperInvariant(), "", "", ""];
        }
    }

    private static Func<WrittenFile, WrittenFile> In(string folder) => file => file with { Name = $"{folder}/{file.Name}" };
}
