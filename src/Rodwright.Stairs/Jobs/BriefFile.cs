using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Checks;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Jobs;

/// <summary>Reads job files in which the layout is still to be chosen.</summary>
public static class BriefFile
{
    private static readonly HashSet<string> StillToChoose = ["layout", "going", "width"];

    /// <summary>
    /// What a stair is to be chosen for, or everything that is wrong with the text, all at once. Layout and going may be missing; when they are there they are read, so
    /// that their errors are reported, and choose nothing.
    /// </summary>
    /// <param name="text">The file.</param>
    /// <param name="shelf">The tables it may name; without them a shop's own ones are taken by their name.</param>
    public static Outcome<Brief> Read(string text, RegulationShelf? shelf = null)
    {
        var reading = new JobReading(FileKind.Job, shelf);
        Job job;
        using (var document = JobText.Parse(reading, text))
        {
            if (document is null) return Outcome<Brief>.Refused(reading.Findings);
            reading.Take(UnitsField.Said(document.RootElement));
            // What compares the layout with something has nothing to compare.
            foreach (var path in StillToChoose) if (!Holds(document.RootElement, path)) reading.Withhold(path);
            job = Group.Read(reading, document.RootElement, "", JobFields.BlankIn(reading.Units), JobFields.All, optional: StillToChoose);
        }
        foreach (var check in JobChecks.All) check.Apply(reading, job);
        SurveyChecks.Apply(reading, job.Survey);
        if (reading.Findings.Any(f => f.Severity == Severity.Error)) return Outcome<Brief>.Refused(reading.Findings);
        return Outcome<Brief>.Of(
            new()
            {
                Title = job.Title, Units = job.Units, Regulation = job.Regulation, Survey = job.Survey, Practice = job.Practice, ModelScale = job.ModelScale, Wishes = job.Wishes, BottomStep = job.BottomStep, Ends = job.Ends,
                Width = reading.IsGiven("width") ? job.Width : null,
                Sides = reading.IsGiven("sides.left") && reading.IsGiven("sides.right") ? job.Sides : null,
            },
            reading.Findings);
    }

    private static bool Holds(System.Text.Json.JsonElement json, string name) => json.ValueKind == System.Text.Json.JsonValueKind.Object && json.TryGetProperty(name, out _);
}
