using System.CommandLine;
using Rodwright.Joinery.Timber;
using Rodwright.Output;

namespace Rodwright.Commands;

/// <summary>rodwright quote JOB: what the stair costs by the shop's own prices, line by line.</summary>
internal static class QuoteCommand
{
    public static Command Make(Surroundings around)
    {
        var job = JobArgument.Make();
        var regulations = RegulationFolder.Option();
        var shop = ShopArgument.Option();
        var json = new Option<bool>("--json") { Description = "Print the costing as JSON" };
        var command = new Command("quote", "Reckon a stair by the shop's prices: timber, fixings, hours, waste and margin, each with its formula") { job, shop, json, regulations };
        command.SetAction((parsed, stop) => Task.FromResult(Run(parsed, stop)));
        return command;

        int Run(ParseResult parsed, CancellationToken stop)
        {
            var path = parsed.GetValue(job)!;
            if (JobArgument.SetOut(path, parsed.GetValue(regulations), around) is not { } stair) return Exit.Errors;
            if (ShopArgument.Read(parsed.GetValue(shop), stair.Job, around) is not { } from) return Exit.Errors;
            var plan = BoardPlan.Of(CuttingList.Of(stair.Kit, from), stop: stop);
            if (parsed.GetValue(json)) around.Out.WriteLine(TimberJson.WriteCosting(plan));
            else TimberText.WriteCosting(around.Out, path, plan);
            FindingText.Write(around.Error, path, plan.List.Findings.Concat(plan.Findings));
            return Exit.Done;
        }
    }
}
