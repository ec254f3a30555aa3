using Rodwright.Drawings.Paper;

namespace Rodwright.Rod;

/// <summary>How a pack is to be printed.</summary>
/// <param name="Paper">What the printer holds.</param>
/// <param name="Scale">Scale wanted for the scaled sheets; null takes the largest usual scale that fits.</param>
/// <param name="Date">Date for the title blocks, already worded.</param>
/// <param name="Revision">Revision for the title blocks.</param>
public sealed record RodStyle(PaperStock Paper, Scale? Scale, string Date, string Revision = "A");
