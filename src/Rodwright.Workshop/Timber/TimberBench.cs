using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Timber;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Shops;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Timber;

/// <summary>The timber of a stair as a page shows it: list, boards, costing. Immutable.</summary>
/// <param name="Stair">The stair.</param>
/// <param name="Plan">Its board plan, with the list it is made for.</param>
/// <param name="Costing">What it costs.</param>
/// <param name="Groups">The list's lines: equal pieces together.</param>
/// <param name="Boards">Every board, drawn.</param>
public sealed record TimberBench(Stair Stair, BoardPlan Plan, Costing Costing, ImmutableArray<ListedGroup> Groups, ImmutableArray<BoardCard> Boards)
{
    /// <summary>What the shop has no wood for, and what could not be planned.</summary>
    public IEnumerable<Finding> Findings => Plan.List.Findings.Concat(Plan.Findings);

    /// <summary>Plans a stair's timber; up to a second's work.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="stop">Gives up.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static TimberBench Of(Stair stair, Shop shop, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(stair);
        var plan = BoardPlan.Of(CuttingList.Of(stair.Kit, shop), stop);
        return new(stair, plan, Costing.Of(plan), [.. ListedGroup.Of(plan.List)], BoardCard.Of(plan));
    }
}

/// <summary>A board of the plan, drawn.</summary>
/// <param name="Board">The board.</param>
/// <param name="Title">"Board 3".</param>
/// <param name="Words">What it is, what it costs and how it is ripped.</param>
/// <param name="Picture">All boards of a plan are drawn at one scale.</param>
public sealed record BoardCard(PlannedBoard Board, string Title, string Words, Picture Picture)
{
    // A screen shows about six dots to the millimetre of these pictures: letters of 2.2 are read at arm's length.
    private const double Longest = 118;
    private const double Lettering = 2.2;
    private const double Least = 8; // a finger's breadth
    private const double Edge = 1;

    /// <summary>The cards of a plan.</summary>
    internal static ImmutableArray<BoardCard> Of(BoardPlan plan)
    {
        var factor = Longest / plan.Boards.Select(b => b.Length).DefaultIfEmpty(1).Max();
        return [.. plan.Boards.Select(b => Of(new BoardPicture(plan, b, factor, Lettering, Least), b))];
    }

    private static BoardCard Of(BoardPicture picture, PlannedBoard board)
    {
        var height = picture.Height + 2 * Edge;
        return new(board, picture.Title, picture.Words, new(Longest + 2 * Edge, height, [.. picture.Draw(new Point2(Edge, height - Edge), forScreen: true)]));
    }
}
