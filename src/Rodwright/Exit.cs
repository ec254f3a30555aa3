namespace Rodwright;

/// <summary>What the program's exit codes mean.</summary>
public static class Exit
{
    /// <summary>Done. A stair with breaches is still set out and packed.</summary>
    public const int Done = 0;

    /// <summary>Errors in the job, or for check and prove something that does not hold.</summary>
    public const int Errors = 1;

    /// <summary>The command line itself was wrong.</summary>
    public const int Usage = 2;
}
