using System.CommandLine;
using Rodwright.Output;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;

namespace Rodwright.Commands;

/// <summary>The shop whose stock and prices a command reckons with.</summary>
internal static class ShopArgument
{
    public static Option<string?> Option() => new("--shop") { Description = $"Shop file, NAME{ShopFile.Ending}, with stock, allowances, prices and hours; without it usual sizes and example prices" };

    /// <summary>The shop a file holds, or the usual one; prints every error and returns null when the file is bad.</summary>
    public static Shop? Read(string? path, Job job, Surroundings around)
    {
        if (path is null) return UsualShop.For(job);
        var (text, refused) = JobArgument.Text(path);
        var outcome = text is null ? Outcome<Shop>.Refused([refused! with { Hint = $"give the path of a shop file, NAME{ShopFile.Ending}" }]) : ShopFile.Read(text);
        FindingText.Write(around.Error, path, outcome.Findings);
        if (outcome.Value is { } shop) return shop;
        var errors = outcome.Findings.Count(f => f.Severity == Severity.Error);
        around.Error.WriteLine($"{path}: {errors} error{(errors == 1 ? "" : "s")} in the shop file, nothing done");
        return null;
    }
}
