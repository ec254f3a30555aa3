using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Assembly;
using Rodwright.Rod.Pictorial;
using Rodwright.Rod.Pieces.Small;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Pieces;

/// <summary>The sheets of single pieces: newels, tapered treads, straight treads, nosing pieces, risers, a rounded bottom step, rails, balusters and caps, small pieces, carriages; the order of assembly; then ordinates and the parts list.</summary>
public static class PieceSheets
{
    /// <summary>The sheets in the order they are wanted at the bench.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod) =>
    [
        .. NewelSheets.Make(rod), .. PictorialSheets.Newels(rod), .. TaperedTreadSheets.Make(rod), .. LevelPieceSheets.Treads(rod), .. LevelPieceSheets.Nosings(rod), .. RiserSheets.Make(rod), .. BottomStepSheets.Make(rod),
        .. RailSheets.Make(rod), .. CapSheets.Make(rod), .. SmallPieceSheets.Make(rod), .. CarriageSheets.Make(rod),
        .. AssemblySheets.Make(rod), .. TableSheets.Make(rod),
    ];
}
