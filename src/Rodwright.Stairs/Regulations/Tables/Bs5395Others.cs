using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>BS 5395-1:2010, its other rows: a private stair wide enough for two to pass, and a stair of normal use. Advice throughout (standards.md 9a).</summary>
internal static class Bs5395Others
{
    public static Regulation TwoWay { get; } = Bs5395.Table with
    {
        Id = "bs-5395-1-2010-two-way",
        Title = "BS 5395-1:2010, code of practice, private stair, two-way traffic",
        Clauses =
        [
            .. Bs5395.Table.Clauses.Select(c => c.Rule == ClearWidthRule.Instance
                ? new("Table 1 fn A", ClearWidthRule.Instance, Limit.AtLeast(1000), TextSeen, "clear width 1000 where two pass, between handrails, which are not set out yet", Weight.Advice) : c),
        ],
    };

    public static Regulation NormalUse { get; } = Bs5395.Table with
    {
        Id = "bs-5395-1-2010-normal-use",
        Title = "BS 5395-1:2010, code of practice, normal-use stair",
        Clauses =
        [
            new("Table 1", RiseRule.Instance, Limit.Between(150, 180), TextSeen, "normal-use stair: rise 150 to 180", Weight.Advice),
            new("Table 1", GoingRule.Instance, Limit.Between(300, 450), TextSeen, "normal-use stair: going 300 to 450", Weight.Advice),
            new("Table 1", ClearWidthRule.Instance, Limit.AtLeast(1000), TextSeen, "clear width 1000, between handrails, which are not set out yet", Weight.Advice),
            .. Bs5395.Table.Clauses.Where(c => c.Rule != RiseRule.Instance && c.Rule != GoingRule.Instance && c.Rule != ClearWidthRule.Instance && c.Rule != HandrailHeightRule.Instance),
            new("Table 1", HandrailHeightRule.Instance, Limit.None, Memory, "row not read", Weight.Advice),
        ],
    };
}
