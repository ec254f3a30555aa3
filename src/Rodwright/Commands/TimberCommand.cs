using System.CommandLine;
using System.Text;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Joinery;
using Rodwright.Joinery.Timber;
using Rodwright.Output;
using Rodwright.Rod;
using Rodwright.Rod.Board;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Timber;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Shops;

namespace Rodwright.Commands;

/// <summary>rodwright timber JOB: cutting list and board plan, to read, as JSON or as files.</summary>
internal static class TimberCommand
{
    public static Command Make(Surroundings around)
    {
        var job = JobArgument.Make();
        var regulations = RegulationFolder.Option();
        var shop = ShopArgument.Option();
        var json = new Option<bool>("--json") { Description = "Print pieces, boards with their cuts, bound and costing as JSON" };
        var folder = new Option<string?>("--out") { Description = "Folder for sheets and quotation as PDF, and for the tables as workbook and CSV; made when it is not there" };
        var labels = new Option<string?>("--labels") { Description = $"With --out: labels too, on sheets of {string.Join(", ", LabelStock.All.Select(l => l.Id))}" };
        labels.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } id && LabelStock.Of(id) is null) result.AddError($"--labels: one of {string.Join(", ", LabelStock.All.Select(l => l.Id))}");
        });
        var link = new Option<string>("--link") { Description = "What the labels' codes put before the name of the set of sheets: an address or a folder", DefaultValueFactory = _ => "" };
        var keep = new Option<string?>("--keep") { Description = "Shop file to write, with this job's offcuts on its rack and the ones used taken off; it may be the one that was read" };
        var command = new Command("timber", "List the timber and plan the boards: what to buy, and what to cut from each") { job, shop, json, folder, labels, link, keep, regulations };
        command.SetAction((parsed, stop) => Task.FromResult(Run(parsed, stop)));
        return command;

        IReadOnlyList<WrittenFile> Files(Stair stair, Shop shop, BoardPlan plan, ParseResult parsed)
        {
            var date = DateOnly.FromDateTime(around.Time.GetLocalNow().DateTime).ToString("O", null);
            var rod = new RodJob(stair, stair.Prove(), new RodStyle(PaperFit.Default(stair.Units), null, date)) { Router = shop.Router };
            var files = TimberFiles.Make(rod, plan);
            if (parsed.GetValue(labels) is not { } id) return files;
            return [.. files, .. new PdfFormat().Write(LabelSheets.Make(rod, plan.List, LabelStock.Of(id)!, Pack.Draw(rod).Set, parsed.GetValue(link)!))];
        }

        int Run(ParseResult parsed, CancellationToken stop)
        {
            var path = parsed.GetValue(job)!;
            if (JobArgument.SetOut(path, parsed.GetValue(regulations), around) is not { } stair) return Exit.Errors;
            if (ShopArgument.Read(parsed.GetValue(shop), stair.Job, around) is not { } from) return Exit.Errors;
            var plan = BoardPlan.Of(CuttingList.Of(stair.Kit, from), stop: stop);
            if (parsed.GetValue(json)) around.Out.WriteLine(TimberJson.Write(stair, plan));
            else TimberText.Write(around.Out, path, plan);
            var findings = plan.List.Findings.Concat(plan.Findings).ToList();
            FindingText.Write(around.Error, path, findings);
            var written = (parsed.GetValue(folder) is not { } to || Written(to, Files(stair, from, plan, parsed), around))
                && (parsed.GetValue(keep) is not { } kept || Written(Path.GetDirectoryName(Path.GetFullPath(kept))!, [new(Path.GetFileName(kept), "application/json", Encoding.UTF8.GetBytes(ShopFile.Write(Racks.After(plan))))], around));
            return written && findings.All(f => f.Severity < Severity.Error) ? Exit.Done : Exit.Errors;
        }
    }

    private static bool Written(string folder, IReadOnlyCollection<WrittenFile> files, Surroundings around)
    {
        try
        {
            PackFolder.Write(folder, files);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            around.Error.WriteLine($"{folder}: error RW6003: nothing can be written there: {e.Message}");
            return false;
        }
    }
}
