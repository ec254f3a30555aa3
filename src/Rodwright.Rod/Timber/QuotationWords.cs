using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Timber;

/// <summary>What a quotation says of the stair, in a customer's words.</summary>
internal static class QuotationWords
{
    /// <summary>What the price is of, and what it is not.</summary>
    public const string Terms = "The price is of making the stair in the shop with the materials named. Tax, delivery and fitting are not in it unless the shop's own list of work has them.";

    /// <summary>Its sizes, what it is made of, and what it is set out after.</summary>
    public static IEnumerable<string> Of(RodJob rod, BoardPlan plan)
    {
        var (units, kit, job) = (rod.Units, rod.Stair.Kit, rod.Stair.Job);
        var p = kit.Plan;
        yield return $"A stair of {Number.Print(p.Risers, 0)} risers, {SheetStart.HandWords(job)}, for a height of {units.With(p.Risers * p.Rise)}: rise {units.Print(p.Rise)}, going {units.Print(p.Going)}, {units.Print(job.Width)} over the strings.";
        yield return "Made of " + string.Join("; ", Pieces(plan).Select(x => $"{Number.Print(x.Count, 0)} {Name(x.Kind, x.Count)} in {x.Material}{(IsBoard(x.Kind) ? $" {units.Print(x.Thickness)} thick" : "")}")) + ".";
        yield return $"Set out after {p.Regulation.Title}{(rod.Stair.Regulation.Passes ? "" : "; see the report for what does not keep it")}. Strings housed, wedged and glued; newels morticed, draw-bored and pegged.";
    }

    private static IEnumerable<(PartKind Kind, string Material, int Count, double Thickness)> Pieces(BoardPlan plan) => ListedGroup.Of(plan.List)
        .GroupBy(g => (Kind: Plain(g.First.Part.Kind), g.First.Part.Material))
        .Where(g => Name(g.Key.Kind, 1).Length > 0)
        .Select(g => (g.Key.Kind, g.Key.Material, g.Sum(x => x.Pieces.Count), g.First().First.Part.Blank.Thickness));

    private static bool IsBoard(PartKind kind) => kind is PartKind.WallString or PartKind.NewelString or PartKind.Tread or PartKind.TaperedTread or PartKind.Riser or PartKind.NosingPiece;

    /// <summary>A customer's words know one kind of riser.</summary>
    private static PartKind Plain(PartKind kind) => kind is PartKind.TaperedRiser or PartKind.BentRiser ? PartKind.Riser : kind;

    /// <summary>Empty for what a customer never sees: wedges, blocks, fillets and the like.</summary>
    private static string Name(PartKind kind, int count)
    {
        var one = kind switch
        {
            PartKind.WallString => "wall string",
            PartKind.NewelString => "newel string",
            PartKind.Newel => "newel",
            PartKind.WallNewel => "half newel",
            PartKind.Tread => "tread",
            PartKind.TaperedTread => "tapered tread",
            PartKind.Riser => "riser",
            PartKind.NosingPiece => "nosing piece",
            PartKind.Handrail => "handrail",
            PartKind.WallRail => "wall rail",
            PartKind.BaseRail => "base rail",
            PartKind.Baluster => "baluster",
            PartKind.NewelCap => "newel cap",
            _ => "",
        };
        return one.Length == 0 || count == 1 ? one : one + "s";
    }
}
