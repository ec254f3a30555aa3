using Rodwright.Stairs.Regulations;

namespace Rodwright.Pages.Fields;

/// <summary>What people call the words of the job file.</summary>
internal static class ChoiceWords
{
    /// <summary>A choice for people: a regulation by its title, true and false as yes and no.</summary>
    public static string Of(string path, string choice) => (path, choice) switch
    {
        ("regulation", _) => RegulationCatalogue.Find(choice)?.Title ?? choice,
        (_, "true") => "yes",
        (_, "false") => "no",
        _ => choice,
    };
}
