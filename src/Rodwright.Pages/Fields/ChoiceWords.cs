namespace Rodwright.Pages.Fields;

/// <summary>What people call the words of the job file.</summary>
internal static class ChoiceWords
{
    /// <summary>A choice for people: true and false as yes and no.</summary>
    public static string Of(string choice) => choice switch
    {
        "true" => "yes",
        "false" => "no",
        _ => choice,
    };
}
