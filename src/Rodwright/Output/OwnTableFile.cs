using System.Text;
using Rodwright.Drawings.Formats;
using Rodwright.Joinery;
using Rodwright.Stairs.Regulations.Own;

namespace Rodwright.Output;

/// <summary>The shop's own table a stair was judged by, as a file of its pack: the pack can be set out again from what is in it.</summary>
internal static class OwnTableFile
{
    /// <summary>The folder it lies in, beside the job.</summary>
    public const string Folder = "regulations";

    /// <summary>The file; none where a published table judged.</summary>
    public static IEnumerable<WrittenFile> Of(Stair stair)
    {
        if (stair.Plan.Regulation.WrittenAs is { } own)
            yield return new($"{Folder}/{own.Id}{OwnRegulationFile.Ending}", "application/json", Encoding.UTF8.GetBytes(OwnRegulationFile.Write(own)));
    }
}
