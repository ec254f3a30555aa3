using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Pictorial;

namespace Rodwright.Rod.Sheets;

/// <summary>The sheets that show the stair as a whole and its strings. The cover comes before them and is made last: <see cref="Cover"/>.</summary>
public static class StairSheets
{
    /// <summary>The rod where one page holds it, plan, the stair pictorially, room and section where they were measured, wall strings, newel strings.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod) =>
        [.. RodSheets.Make(rod), .. PlanSheets.Make(rod), .. PictorialSheets.Whole(rod), .. RoomSheets.Make(rod), .. SectionSheets.Make(rod), .. StringSheets.Walls(rod), .. StringSheets.Newels(rod)];
}
