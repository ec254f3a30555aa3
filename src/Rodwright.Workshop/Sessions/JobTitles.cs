namespace Rodwright.Workshop.Sessions;

/// <summary>Titles of jobs made from others.</summary>
public static class JobTitles
{
    private const int Longest = 80; // as the job file allows
    private const string Ending = ", copy";

    /// <summary>The title of a copy, shortened where it would grow too long.</summary>
    public static string Copy(string title) => (title.Length + Ending.Length <= Longest ? title : title[..(Longest - Ending.Length)]) + Ending;
}
