namespace Rodwright.Stairs.Regulations.Own;

/// <summary>
/// The codes of what a regulation file alone can be refused for; what goes wrong in any file has the codes of <see cref="Jobs.JobCodes"/>. Stable: a code keeps
/// its meaning for good, and a new kind takes a new number.
/// </summary>
public static class OwnCodes
{
    /// <summary>An id that does not begin with own-, or has other signs than small letters, figures and dashes.</summary>
    public const string Id = "RW1201";

    /// <summary>A table to be based on that is not published here.</summary>
    public const string BasedOn = "RW1202";

    /// <summary>A rule that this version does not know.</summary>
    public const string Rule = "RW1203";

    /// <summary>A table with no clause, its own or taken over.</summary>
    public const string NoClauses = "RW1204";

    /// <summary>More clauses than any table has.</summary>
    public const string TooManyClauses = "RW1205";

    /// <summary>A clause for something measured that says no limit.</summary>
    public const string NoLimit = "RW1206";

    /// <summary>A clause whose limit is said in two ways.</summary>
    public const string TwoLimits = "RW1207";

    /// <summary>A least above the most.</summary>
    public const string LeastAboveMost = "RW1208";

    /// <summary>A clause to be replaced that the table it is based on does not have for that rule.</summary>
    public const string Replaces = "RW1209";

    /// <summary>A clause to be replaced where the table is based on none.</summary>
    public const string ReplacesNothing = "RW1210";

    /// <summary>Two clauses of one number for one rule.</summary>
    public const string Twice = "RW1211";

    /// <summary>A number from memory that would fail a stair.</summary>
    public const string MemoryFails = "RW1212";

    /// <summary>Pairs of rise and going for something that is no going.</summary>
    public const string PairsElsewhere = "RW1213";

    /// <summary>A pair whose least lies above its most.</summary>
    public const string Pair = "RW1214";

    /// <summary>An empty list of pairs.</summary>
    public const string NoPairs = "RW1215";

    /// <summary>A length to be measured against where the rule measures no length.</summary>
    public const string NoLength = "RW1216";

    /// <summary>A part of one as the limit of a rule that counts.</summary>
    public const string NotWhole = "RW1217";

    /// <summary>An angle that no stair has.</summary>
    public const string Angle = "RW1218";

    /// <summary>A way of measuring goings that is neither chord nor arc.</summary>
    public const string Going = "RW1219";

    /// <summary>A way of measuring narrow ends that this version does not know.</summary>
    public const string Narrow = "RW1220";

    /// <summary>Something to be measured against that this version does not know.</summary>
    public const string AtLeast = "RW1221";

    /// <summary>A mark of evidence that this version does not know.</summary>
    public const string Evidence = "RW1222";

    /// <summary>A weight that is neither limit nor advice.</summary>
    public const string Weight = "RW1223";

    /// <summary>A measuring line that would run along the inner side.</summary>
    public const string Line = "RW1224";

    /// <summary>Two tables of one id.</summary>
    public const string SameId = "RW1225";

    /// <summary>More pairs than any document has.</summary>
    public const string TooManyPairs = "RW1226";
}
