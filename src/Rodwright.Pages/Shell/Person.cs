namespace Rodwright.Pages.Shell;

/// <summary>Who sits at this browser, as they call themselves: changes are told to others under this name.</summary>
public sealed class Person
{
    /// <summary>The name until one is given.</summary>
    public const string Nobody = "somebody at the bench";

    /// <summary>Longest name kept.</summary>
    public const int Longest = 40;

    /// <summary>The name; never empty.</summary>
    public string Name { get; private set; } = Nobody;

    /// <summary>Whether a name was given.</summary>
    public bool IsKnown => Name != Nobody;

    /// <summary>Takes a name; an empty one is forgotten.</summary>
    public void Take(string? name)
    {
        var trimmed = string.Concat((name ?? "").Where(c => !char.IsControl(c))).Trim();
        Name = trimmed.Length == 0 ? Nobody : trimmed.Length > Longest ? trimmed[..Longest] : trimmed;
    }
}
