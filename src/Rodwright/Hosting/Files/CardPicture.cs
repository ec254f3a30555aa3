using Rodwright.Drawings.Formats.Svg;
using Rodwright.Joinery;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Hosting.Files;

/// <summary>The picture of a job on the shelf.</summary>
internal static class CardPicture
{
    /// <summary>For a job whose stair cannot be.</summary>
    public const string None = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 320 200\"><path d=\"M120 60 200 140M200 60 120 140\" stroke=\"#999\" stroke-width=\"3\" fill=\"none\"/></svg>";

    /// <summary>The plan.</summary>
    public static string Of(Stair stair)
    {
        var picture = JobPictures.Card(stair);
        return SvgWriter.Write("", picture.Width, picture.Height, picture.Marks);
    }
}
