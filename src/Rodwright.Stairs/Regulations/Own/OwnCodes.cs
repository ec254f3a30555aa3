namespace Rodwright.Stairs.Regulations.Own;

/// <summary>
/// The codes of what a regulation file alone can be refused for; what goes wrong in any file has the codes of <see cref="Jobs.JobCodes"/>. Stable: a code keeps
/// its meaning for good, and a new kind takes a new number.
/// </summary>
public static class OwnCodes
{
    /// <summary>An id that does not begin with own-, or has other signs than small letters, figures and dashes.</summary>
    public const string Id = "RW1101";

    /// <summary>A table to be based on that is not published here.</summary>
    public const string BasedOn = "RW1102";

    /// <summary>A rule that this version does not know.</summary>
    public const string Rule = "RW1103";

    /// <summary>A table with no clause, its own or taken over.</summary>
    public const string NoClauses = "RW1104";

    /// <summary>More clauses than any table has.</summary>
    public const string TooManyClauses = "RW1105";

    /// <summary>A clause for something measured that says no limit.</summary>
    public const string NoLimit = "RW1106";

    /// <summary>A clause whose limit is said in two ways.</summary>
    public const string TwoLimits = "RW1107";

    /// <summary>A least above the most.</summary>
    public const string LeastAboveMost = "RW1108";

    /// <summary>A clause to be replaced that the table it is based on does not have for that rule.</summary>
    public const string Replaces = "RW1109";

    /// <summary>A clause to be replaced where the table is based on none.</summary>
    public const string ReplacesNothing = "RW1110";

    /// <summary>Two clauses of one number for one rule.</summary>
    public const string Twice = "RW1111";

    /// <summary>A number from memory that would fail a stair.</summary>
    public const string MemoryFails = "RW1112";

    /// <summary>Pairs of rise and going for something that is no going.</summary>
    public const string PairsElsewhere = "RW1113";

    /// <summary>A pair whose least lies above its most.</summary>
    public const string Pair = "RW1114";

    /// <summary>An empty list of pairs.</summary>
    public const string NoPairs = "RW1115";

    /// <summary>A length to be measured against where the rule measures no length.</summary>
    public const string NoLength = "RW1116";

    /// <summary>A part of one as the limit of a rule that counts.</summary>
    public const string NotWhole = "RW1117";

    /// <summary>An angle that no stair has.</summary>
    public const string Angle = "RW1118";

    /// <summary>A way of measuring goings that is neither chord nor arc.</summary>
    public const string Going = "RW1119";

    /// <summary>A way of measuring narrow ends that this version does not know.</summary>
    public const string Narrow = "RW1120";

    /// <summary>Something to be measured against that this version does not know.</summary>
    public const string AtLeast = "RW1121";

    /// <summary>A mark of evidence that this version does not know.</summary>
    public const string Evidence = "RW1122";

    /// <summary>A weight that is neither limit nor advice.</summary>
    public const string Weight = "RW1123";

    /// <summary>A measuring line that would run along the inner side.</summary>
    public const string Line = "RW1124";

    /// <summary>Two tables of one id.</summary>
    public const string SameId = "RW1125";

    /// <summary>More pairs than any document has.</summary>
    public const string TooManyPairs = "RW1126";
}
