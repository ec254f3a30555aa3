namespace Rodwright.Cutting.Models;

/// <summary>A kind of strip that pieces are cut from: of one length, in one width class.</summary>
/// <param name="Index">Place in the model.</param>
/// <param name="Stock">The board it is; -1 where boards ripped in several feed it.</param>
/// <param name="Class">Its width class; it takes every item whose class is not above it.</param>
/// <param name="Capacity">Room along the grain, one kerf added.</param>
/// <param name="Cost">What a strip costs where it is its whole board; 0 where boards ripped in several feed it.</param>
/// <param name="FedRow">Row that ties its use to the boards that are ripped; -1 where it is its whole board.</param>
internal sealed record Lane(int Index, int Stock, int Class, int Capacity, long Cost, int FedRow)
{
    public bool IsWholeBoard => FedRow < 0;
}

/// <summary>A way of ripping a board.</summary>
/// <param name="Stock">The board.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="Lanes">The strips it gives.</param>
/// <param name="Counts">How many of each.</param>
internal sealed record Ripping(int Stock, long Cost, int[] Lanes, int[] Counts);
