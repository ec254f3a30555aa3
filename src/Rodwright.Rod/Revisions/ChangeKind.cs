namespace Rodwright.Rod.Revisions;

/// <summary>What became of a piece or a sheet from one job to another.</summary>
public enum ChangeKind
{
    /// <summary>It was not there before.</summary>
    Added,

    /// <summary>It is there no longer.</summary>
    Removed,

    /// <summary>It is another now.</summary>
    Changed,
}
