using System.CommandLine;
using System.Text;
using Rodwright.Drawings.Formats;
using Rodwright.Joinery.Timber;
using Rodwright.Geometry;
using Rodwright.Output;
using Rodwright.Rod;
using Rodwright.Rod.Machining;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Timber;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;

namespace Rodwright.Commands;

/// <summary>rodwright pack JOB --out DIR: everything to make the stair from.</summary>
internal static class PackCommand
{
    public static Command Make(Surroundings around)
    {
        var job = JobArgument.Make();
        var regulations = RegulationFolder.Option();
        var folder = new Option<string>("--out") { Description = "Folder for the pack; made when it is not there", Required = true };
        var scale = new Option<string?>("--scale") { Description = "Scale of the sheets, for example 1:5, or inches to the foot like \"1 1/2 in\"; without it the largest usual scale that fits the paper" };
        var paper = new Option<string?>("--paper") { Description = "A4, A3, A2, A1, A0; Letter, Legal, Tabloid, Arch A to E, ANSI A to E; 610, 914 (rolls); or WIDTHxHEIGHT in mm, or like 24inx36in. Without it A3, for a job in inches Tabloid" };
        var revision = new Option<string>("--revision") { Description = "Revision for the title blocks", DefaultValueFactory = _ => "A" };
        var booklet = new Option<bool>("--booklet") { Description = "Add the step-by-step booklet for setting the rod out by hand" };
        var model = new Option<bool>("--model") { Description = "Add the solid model, each piece by name: stair.glb, stair.step and stair.ifc" };
        var timber = new Option<bool>("--timber") { Description = "Add the timber, in a folder of its own: cutting list, board plan, costing and quotation, as sheets, workbook and CSV" };
        var shop = ShopArgument.Option();
        shop.Description = $"Shop file, NAME{ShopFile.Ending}: its routers' cutters and bush are for the machining files and jigs, its stock and prices for --timber; without it usual ones";
        var router = new RouterOptions();
        PrintOptions.Validate(paper, scale);
        var command = new Command("pack", "Write the pack: sheets, true-size templates, DXF per part, ordinates and lists") { job, folder, scale, paper, revision, booklet, model, timber, regulations, shop };
        router.AddTo(command);
        command.SetAction((parsed, stop) => Task.FromResult(Run(parsed, stop)));
        return command;

        int Run(ParseResult parsed, CancellationToken stop)
        {
            var path = parsed.GetValue(job)!;
            if (JobArgument.SetOut(path, parsed.GetValue(regulations), around) is not { } stair) return Exit.Errors;
            if (ShopArgument.Read(parsed.GetValue(shop), stair.Job, around) is not { } from) return Exit.Errors;
            var tools = router.Of(from.Router, parsed);
            if (tools.Offset <= 0)
            {
                FindingText.Write(around.Error, path, [new(ShopCodes.BushTooNarrow, Severity.Error, "--bush", $"a cutter of {Number.Exact(tools.HandCutter)} does not pass a bush of {Number.Exact(tools.Bush)}", "give the bush's outside, or the hand router's cutter")]);
                return Exit.Errors;
            }
            var today = DateOnly.FromDateTime(around.Time.GetLocalNow().DateTime);
            var progress = new Progress(around);
            progress.Report("proving");
            var rod = new RodJob(stair, stair.Prove(), PrintOptions.Style(parsed.GetValue(paper), parsed.GetValue(scale), stair.Units) with { Date = today.ToString("O", null), Revision = parsed.GetValue(revision)! }) { Router = tools };
            var pack = Pack.Draw(rod, progress, parsed.GetValue(booklet));
            List<WrittenFile> others =
            [
                new("job.stair.json", "application/json", Encoding.UTF8.GetBytes(JobFile.Write(stair.Job))),
                new("result.json", "application/json", Encoding.UTF8.GetBytes(StairJson.Write(stair, rod.Proof))),
            ];
            others.AddRange(OwnTableFile.Of(stair));
            if (parsed.GetValue(model))
            {
                progress.Report("making the solid model");
                others.AddRange(StairModel.All(stair, today));
            }
            var findings = stair.Findings;
            if (parsed.GetValue(timber))
            {
                progress.Report("planning the boards");
                var plan = BoardPlan.Of(CuttingList.Of(stair.Kit, from), stop: stop);
                findings = [.. findings, .. plan.List.Findings, .. plan.Findings];
                others.AddRange(TimberFiles.Make(rod, plan).Select(f => f with { Name = $"timber/{f.Name}" }));
            }
            var files = pack.Write(others, progress);
            try
            {
                PackFolder.Write(parsed.GetValue(folder)!, files);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
            {
                around.Error.WriteLine($"{parsed.GetValue(folder)}: error RW6003: the pack cannot be written there: {e.Message}");
                return Exit.Errors;
            }
            progress.Done();
            FindingText.Write(around.Error, path, findings);
            around.Out.WriteLine($"{pack.Set.Sheets.Length} sheets, {pack.TrueSize.Sheets.Length} true-size pages, {pack.Parts.Length} part files in {parsed.GetValue(folder)}");
            foreach (var line in MachiningSummary.Of(rod, pack)) around.Out.WriteLine(line);
            around.Out.WriteLine(rod.Proof.Holds ? "It goes together." : "It does not go together: see `rodwright prove`.");
            return Exit.Done;
        }
    }

    /// <summary>Progress on one line of a terminal; silent when the output is caught in a file.</summary>
    private sealed class Progress(Surroundings around) : IProgress<string>
    {
        public void Report(string value)
        {
            if (around.IsTerminal) around.Error.Write($"\r\u001b[K{value} …");
        }

        public void Done()
        {
            if (around.IsTerminal) around.Error.Write("\r\u001b[K");
        }
    }
}
