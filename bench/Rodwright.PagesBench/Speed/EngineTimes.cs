using System.Diagnostics;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Joinery;
using Rodwright.Rod.Board;
using Rodwright.Workshop.Sessions;

namespace Rodwright.PagesBench.Speed;

/// <summary>What the server does at a change, done here, part by part.</summary>
internal static class EngineTimes
{
    private const int Warm = 60;
    private const int Times = 60;

    /// <summary>Measures it.</summary>
    public static void Measure(Table table)
    {
        var (setOut, drawn, written, tried) = (new List<double>(), new List<double>(), new List<double>(), new List<double>());
        RodBoard? board = null;
        for (var i = 0; i < Warm + Times; i++)
        {
            var job = BenchJobs.Kite with { Going = Goings.Of(i) };
            var start = Stopwatch.GetTimestamp();
            var state = BenchState.Of(job);
            var stair = Stopwatch.GetTimestamp();
            board = RodBoard.Of(state.Stair!, before: board);
            var rod = Stopwatch.GetTimestamp();
            foreach (var piece in board.Pieces) _ = SvgWriter.Fragment(piece.Marks, piece.Place.Height);
            var end = Stopwatch.GetTimestamp();
            foreach (var finding in state.Findings) _ = RemedyTrial.For(job, finding);
            var rest = Stopwatch.GetTimestamp();
            if (i < Warm) continue;
            setOut.Add(Stopwatch.GetElapsedTime(start, stair).TotalMilliseconds);
            drawn.Add(Stopwatch.GetElapsedTime(stair, rod).TotalMilliseconds);
            written.Add(Stopwatch.GetElapsedTime(rod, end).TotalMilliseconds);
            tried.Add(Stopwatch.GetElapsedTime(end, rest).TotalMilliseconds);
        }
        table.Add("In one process: set out, joined and proved", setOut);
        table.Add("In one process: rod drawn on its board", drawn);
        table.Add("In one process: written for the page", written);
        table.Add("In one process, once the job rests: remedies tried", tried);
    }
}
