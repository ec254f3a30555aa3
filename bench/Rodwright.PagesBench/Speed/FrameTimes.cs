namespace Rodwright.PagesBench.Speed;

/// <summary>What happened while the sheet was moved, ms.</summary>
/// <param name="Frames">Each frame's length.</param>
/// <param name="Long">Each task of more than 50 ms that held the page up.</param>
internal sealed record FrameTimes(double[] Frames, double[] Long);
