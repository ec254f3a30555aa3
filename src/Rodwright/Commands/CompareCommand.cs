using System.CommandLine;
using Rodwright.Output;
using Rodwright.Rod.Revisions;

namespace Rodwright.Commands;

/// <summary>rodwright compare OLD NEW: which pieces changed, by how much, and which sheets must be printed again.</summary>
internal static class CompareCommand
{
    public static Command Make(Surroundings around)
    {
        var old = new Argument<string>("OLD") { Description = "The job file the work was begun from" };
        var now = new Argument<string>("NEW") { Description = "The job file as it is now" };
        var json = new Option<bool>("--json") { Description = "Print the whole comparison as JSON" };
        var all = new Option<bool>("--all") { Description = "Tell every cut that is another, not only how many" };
        var paper = new Option<string?>("--paper") { Description = "The paper the sheets were printed on, as for pack" };
        var scale = new Option<string?>("--scale") { Description = "The scale the sheets were printed at, as for pack" };
        var regulations = RegulationFolder.Option();
        PrintOptions.Validate(paper, scale);
        var command = new Command("compare", "Compare a job with an earlier one: pieces to make or alter, sheets to print again") { old, now, json, all, paper, scale, regulations };
        command.SetAction(parsed =>
        {
            // Both are read, so that what is wrong with either is told at once.
            var before = JobArgument.SetOut(parsed.GetValue(old)!, parsed.GetValue(regulations), around);
            var after = JobArgument.SetOut(parsed.GetValue(now)!, parsed.GetValue(regulations), around);
            if (before is null || after is null) return Exit.Errors;
            var style = PrintOptions.Style(parsed.GetValue(paper), parsed.GetValue(scale), after.Units);
            var changes = StairChanges.Of(new(before, before.Prove(), style), new(after, after.Prove(), style));
            if (parsed.GetValue(json)) around.Out.WriteLine(ChangesJson.Write(before, after, changes));
            else ChangesText.Write(around.Out, before, after, changes, parsed.GetValue(all));
            return Exit.Done;
        });
        return command;
    }
}
