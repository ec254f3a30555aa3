using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Pages.Regulation;

/// <summary>A small picture as part of a page, in the page's own colours.</summary>
internal static class ScreenPicture
{
    /// <summary>The picture.</summary>
    /// <param name="picture">What is drawn.</param>
    /// <param name="title">Read out by screen readers.</param>
    public static string Of(Picture picture, string title) =>
        $"<svg class=\"drawing\" role=\"img\" aria-label=\"{System.Net.WebUtility.HtmlEncode(title)}\" viewBox=\"0 0 {Number.Print(picture.Width)} {Number.Print(picture.Height)}\">"
        + SvgWriter.Fragment(picture.Marks, picture.Height) + "</svg>";
}
