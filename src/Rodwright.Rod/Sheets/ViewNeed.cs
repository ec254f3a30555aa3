namespace Rodwright.Rod.Sheets;

/// <summary>The room a drawing needs: its own size in timber, and strips of paper round it for figures.</summary>
/// <param name="Width">mm of timber.</param>
/// <param name="Height">mm of timber.</param>
/// <param name="Left">mm of paper.</param>
/// <param name="Right">mm of paper.</param>
/// <param name="Top">mm of paper.</param>
/// <param name="Bottom">mm of paper.</param>
public sealed record ViewNeed(double Width, double Height, double Left = 0, double Right = 0, double Top = 0, double Bottom = 0);
