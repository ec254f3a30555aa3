using System.CommandLine;
using Rodwright.Geometry;
using Rodwright.Stairs.Shops;

namespace Rodwright.Commands;

/// <summary>Cutters and guide bush on a command line: each over what the shop file says.</summary>
internal sealed class RouterOptions
{
    private readonly Option<string?> cutter = Make("--cutter", "router.cutter", "Machine's cutter, mm across, or like 3/8in: what it leaves in inside corners goes into the machining files");
    private readonly Option<string?> handCutter = Make("--hand-cutter", "router.handCutter", "Hand router's straight cutter, for the jigs");
    private readonly Option<string?> bush = Make("--bush", "router.bush", "Hand router's guide bush, outside, for the jigs");

    /// <summary>Takes the options in.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[cutter, handCutter, bush]) command.Options.Add(option);
    }

    /// <summary>The shop's cutters, with what was said on the command line in their place.</summary>
    public ShopRouter Of(ShopRouter shop, ParseResult parsed) => new()
    {
        Cutter = Read(parsed.GetValue(cutter)) ?? shop.Cutter,
        HandCutter = Read(parsed.GetValue(handCutter)) ?? shop.HandCutter,
        Bush = Read(parsed.GetValue(bush)) ?? shop.Bush,
    };

    private static Option<string?> Make(string name, string field, string words)
    {
        var limits = ShopFields.Descriptions.First(d => d.Path == field);
        var option = new Option<string?>(name) { Description = words };
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is not { } text) return;
            if (Read(text) is not { } size) result.AddError($"{name}: \"{text}\" is no size: write millimetres, 12.7, or inches with their mark, 1/2in");
            else if (size < limits.Least || size > limits.Most) result.AddError($"{name}: {Number.Exact(size)} mm; {Number.Exact(limits.Least!.Value)} to {Number.Exact(limits.Most!.Value)} mm will do");
        });
        return option;
    }

    private static double? Read(string? text)
    {
        if (text is null) return null;
        var units = text.Contains("in", StringComparison.OrdinalIgnoreCase) || text.Contains('"') || text.Contains('″') ? Units.Inches : Units.Millimetres;
        return units.TryRead(text, out var size) ? size : null;
    }
}
