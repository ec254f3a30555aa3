using System.CommandLine;
using Rodwright.Joinery.Proposals;
using Rodwright.Output;
using Rodwright.Stairs.Proposals;

namespace Rodwright.Commands;

/// <summary>rodwright propose SURVEY: every layout that fits a survey under its regulation, ranked, and why the others do not.</summary>
internal static class ProposeCommand
{
    public static Command Make(Surroundings around)
    {
        var survey = new Argument<string>("SURVEY") { Description = "Job file, NAME.stair.json, whose layout is still to be chosen" };
        var json = new Option<bool>("--json") { Description = "Print proposals with their measures and whole job files, and rejected families, as JSON" };
        var top = new Option<int?>("--top") { Description = "Only the best so many" };
        top.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<int?>() is < 1) r.AddError("--top: 1 or more proposals");
        });
        var svg = new Option<string?>("--svg") { Description = "Folder for a small plan of each proposal as SVG" };
        var regulations = RegulationFolder.Option();
        var command = new Command("propose", "Propose every layout that fits a survey, ranked, and say why the others do not") { survey, json, top, svg, regulations };
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(survey)!;
            if (BriefArgument.Read(path, parsed.GetValue(regulations), around) is not { } brief) return Exit.Errors;
            var start = around.Time.GetTimestamp();
            var report = StairProposals.Propose(brief.Brief, brief.Tables);
            var took = around.Time.GetElapsedTime(start).TotalMilliseconds;
            if (parsed.GetValue(top) is { } most) report = report with { Proposals = [.. report.Proposals.Take(most)] };
            if (parsed.GetValue(svg) is { } folder && ProposalPlans.Write(folder, report.Proposals, brief.Tables) is { } fault)
            {
                around.Error.WriteLine($"{folder}: error RW6003: {fault}");
                return Exit.Errors;
            }
            if (parsed.GetValue(json)) around.Out.WriteLine(ProposalJson.Write(report, took));
            else ProposalText.Write(around.Out, path, brief, report, took);
            return report.Proposals.IsEmpty ? Exit.Errors : Exit.Done;
        });
        return command;
    }
}
