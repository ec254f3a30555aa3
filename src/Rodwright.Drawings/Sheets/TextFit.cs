using Rodwright.Drawings.Fonts;

namespace Rodwright.Drawings.Sheets;

/// <summary>Makes one line of text fit a width: first by the next smaller lettering heights, then by leaving off its end.</summary>
public static class TextFit
{
    private static readonly double[] Heights = [10, 7, 5, 3.5, 2.5, 1.8]; // the ISO 3098 series

    /// <summary>The text and height that fit.</summary>
    /// <param name="text">One line.</param>
    /// <param name="width">Room, mm.</param>
    /// <param name="height">The height wished for, mm; it is never exceeded.</param>
    /// <param name="bold">Heavier letters.</param>
    /// <param name="least">The smallest height allowed, mm.</param>
    public static (string Text, double Height) Within(string text, double width, double height, bool bold = false, double least = 1.8)
    {
        if (Lettering.Width(text, height, bold) <= width) return (text, height);
        var smallest = height;
        foreach (var smaller in Heights)
        {
            if (smaller >= height || smaller < least) continue;
            if (Lettering.Width(text, smaller, bold) <= width) return (text, smaller);
            smallest = smaller;
        }
        for (var n = text.Length - 1; n > 0; n--)
        {
            var cut = text[..n].TrimEnd() + "…";
            if (Lettering.Width(cut, smallest, bold) <= width) return (cut, smallest);
        }
        return ("", smallest);
    }
}
