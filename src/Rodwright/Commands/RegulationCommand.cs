using System.CommandLine;
using Rodwright.Output;

namespace Rodwright.Commands;

/// <summary>rodwright regulation [ID]: the tables there are, or one of them clause by clause.</summary>
internal static class RegulationCommand
{
    public static Command Make(Surroundings around)
    {
        var id = new Argument<string?>("ID") { Description = "Table to print; without it they are listed", Arity = ArgumentArity.ZeroOrOne };
        var regulations = RegulationFolder.Option();
        var json = new Option<bool>("--json") { Description = "Print as JSON" };
        var rules = new Option<bool>("--rules") { Description = "List the rules a table may limit instead" };
        var command = new Command("regulation", "List the regulation tables, or print one: clause, rule, limit, how well it is known, source") { id, regulations, json, rules };
        command.SetAction(parsed =>
        {
            if (RegulationFolder.Read(parsed.GetValue(regulations), ".", around) is not { } shelf) return Exit.Errors;
            var asJson = parsed.GetValue(json);
            if (parsed.GetValue(rules))
            {
                if (asJson) around.Out.WriteLine(TablesJson.Rules());
                else TablesText.Rules(around.Out);
                return Exit.Done;
            }
            if (parsed.GetValue(id) is not { } wanted)
            {
                if (asJson) around.Out.WriteLine(TablesJson.List(shelf));
                else TablesText.List(around.Out, shelf);
                return Exit.Done;
            }
            if (shelf.Find(wanted) is not { } table)
            {
                around.Error.WriteLine($"rodwright: there is no table {wanted}; {(shelf.Nearest(wanted) is { } near ? $"did you mean {near}?" : "rodwright regulation lists them")}");
                return Exit.Errors;
            }
            if (asJson) around.Out.WriteLine(TablesJson.One(table));
            else TablesText.One(around.Out, table);
            return Exit.Done;
        });
        return command;
    }
}
