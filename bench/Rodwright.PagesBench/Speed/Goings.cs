namespace Rodwright.PagesBench.Speed;

/// <summary>The going at each change, never the one before it, nor at first the job's own.</summary>
internal static class Goings
{
    /// <summary>Of change number <paramref name="i"/>, mm, 225 to 240.</summary>
    public static double Of(int i) => 225 + (i + 1) * 7 % 16;
}
