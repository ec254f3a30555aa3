namespace Rodwright.Stairs.Shops;

/// <summary>
/// The codes of what a shop file alone can be refused for; what goes wrong in any file has the codes of <see cref="Jobs.JobCodes"/>. Stable: a code keeps its meaning for
/// good, and a new kind takes a new number.
/// </summary>
public static class ShopCodes
{
    /// <summary>Something to be counted by that this version does not know.</summary>
    public const string Counted = "RW1301";

    /// <summary>A board without a price.</summary>
    public const string NoPrice = "RW1302";

    /// <summary>A board with a price of each and a price of a metre.</summary>
    public const string TwoPrices = "RW1303";

    /// <summary>Two offcuts of one id.</summary>
    public const string SameOffcut = "RW1304";

    /// <summary>A board that is listed twice, in the same size and length.</summary>
    public const string SameBoard = "RW1305";

    /// <summary>Work that is to be reckoned without a price of an hour.</summary>
    public const string NoRate = "RW1306";

    /// <summary>A guide bush that its cutter does not pass.</summary>
    public const string BushTooNarrow = "RW1307";
}
