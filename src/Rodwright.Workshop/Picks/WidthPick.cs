using Rodwright.Rod.Things;

namespace Rodwright.Workshop.Picks;

/// <summary>Widths of the stair.</summary>
internal static class WidthPick
{
    public static Pick? Of(PickBench bench, string id) => id switch
    {
        ThingId.Width => Draft.Pick(id, "width over the strings", "outside to outside of the strings", [ThingId.ClearWidth, .. bench.Plan.Strings.Select(s => s.Id)],
            [bench.Given(Why.Width, bench.Job.Width), ClearWidth(bench)]),
        ThingId.ClearWidth => Draft.Pick(id, "clear width", "between the strings' faces", [ThingId.Width, .. bench.Plan.Strings.Select(s => s.Id)],
            [ClearWidth(bench), .. ClauseFacts.At(bench, w => w == "stair", r => r == "clear-width")]),
        _ => null,
    };

    public static Fact ClearWidth(PickBench bench) => bench.Mm("clear width", bench.Plan.ClearWidth, Why.Rule("the width over the strings, less both strings"), Why.Width,
        Working.Of(bench.Job.Width) - bench.Plan.OuterThickness - bench.Plan.InnerThickness);
}
