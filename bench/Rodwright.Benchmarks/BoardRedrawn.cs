using BenchmarkDotNet.Attributes;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Joinery;
using Rodwright.Rod.Board;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Benchmarks;

/// <summary>The rod on the board after one changed number: what a screen waits for before it paints. Wanted, median warm, 12 steps: 10 ms in all.</summary>
[MemoryDiagnoser]
public class BoardRedrawn
{
    private Job job = null!;
    private Stair stair = null!;
    private RodBoard board = null!;
    private int time;

    /// <summary>How many steps of a kite stair, short of the upper floor.</summary>
    [Params(12, 24)]
    public int Steps { get; set; }

    /// <summary>Makes the job, its stair and its board.</summary>
    [GlobalSetup]
    public void MakeJob()
    {
        job = Jobs.Kite(Steps);
        stair = Stair.SetOut(job).Value!;
        board = RodBoard.Of(stair);
    }

    /// <summary>One change to the job, then set out, drawn on the board that was there before, and written.</summary>
    [Benchmark]
    public List<string> ChangeToSvg()
    {
        board = RodBoard.Of(Stair.SetOut(Jobs.Changed(job, ++time)).Value!, before: board);
        return Written(board);
    }

    /// <summary>Drawn only, stage lines included.</summary>
    [Benchmark]
    public RodBoard Drawn() => RodBoard.Of(stair);

    /// <summary>Written only.</summary>
    [Benchmark]
    public List<string> Svg() => Written(board);

    private static List<string> Written(RodBoard board) => [.. board.Pieces.Select(p => SvgWriter.Fragment(p.Marks, p.Place.Height))];
}
