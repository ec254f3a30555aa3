using System.CommandLine;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Stairs.Shops;

namespace Rodwright.Commands;

/// <summary>rodwright schema: the JSON schema of a job file, or of a regulation file.</summary>
internal static class SchemaCommand
{
    public static Command Make(Surroundings around)
    {
        var regulation = new Option<bool>("--regulation") { Description = "The schema of a regulation file, NAME.regulation.json, instead" };
        var shop = new Option<bool>("--shop") { Description = "The schema of a shop file, NAME.shop.json, instead" };
        var command = new Command("schema", "Print the JSON schema of a job file") { regulation, shop };
        command.SetAction(parsed =>
        {
            around.Out.WriteLine(parsed.GetValue(shop) ? ShopFile.Schema() : parsed.GetValue(regulation) ? OwnRegulationFile.Schema() : JobSchema.Text());
            return Exit.Done;
        });
        return command;
    }
}
