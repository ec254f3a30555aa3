using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Starts;

/// <summary>What somebody knows at the beginning of a job, numbers as typed.</summary>
/// <param name="Title">What the job is called.</param>
/// <param name="Height">From finished floor to finished floor, in the unit of the job; several readings with commas between.</param>
/// <param name="Width">Over the strings, likewise.</param>
/// <param name="Regulation">Id of the regulation.</param>
/// <param name="Kind">Kind of stair.</param>
/// <param name="Hand">Which way it turns going up.</param>
public sealed record BlankWishes(string Title, string Height, string Width, string Regulation, BlankKind Kind, Hand Hand)
{
    /// <summary>The unit of the job's lengths.</summary>
    public Units Units { get; init; } = Units.Millimetres;
}
