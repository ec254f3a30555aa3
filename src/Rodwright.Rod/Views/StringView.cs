using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>
/// One string board, or those that meet round corners in one development, as seen looking at the face side: (u, v) of the parts' frames, which the boards
/// share. s runs with u or against it, by the hand of the stair and the side of it.
/// </summary>
public sealed class StringView
{
    private StringView(Stair stair, ImmutableArray<StringBoard> boards)
    {
        Stair = stair;
        Boards = boards;
        Corners = [.. boards.Take(boards.Length - 1).Select(b => (b.Site.Upper.At, TurnPlaces.CornerAt(stair.Plan, b.Site, b.Site.Upper.At)))];
        Sense = boards[0].Part.FaceSide.Frame.U.Dot(Vector3.Level(boards[0].Site.Face.Along)) > 0 ? 1 : -1;
        var (from, to) = (boards.Min(b => LowEnd(b)), boards.Max(b => HighEnd(b)));
        From = from;
        To = to;
        // The last riser of a lone board at a corner belongs to the other board, but the riser on the corner line to both.
        PitchPoints = [.. boards[0].PitchPoints.Where(p => p.At.X >= from - 1 && p.At.X <= to + 1)];
        var box = Box2.Of([At(from, boards[0].Outline.Bounds.MinY), At(to, boards[^1].Outline.Bounds.MaxY)]);
        foreach (var board in boards) box = box.With(board.Part.FaceSide.Outline.Bounds);
        foreach (var p in PitchPoints) box = box.With(At(p.At.X, p.At.Y));
        HasFloor = boards[0].Site.Lower.Level > 0 || box.MinY < stair.Plan.Rise;
        if (HasFloor) box = box.With(At(from, boards[0].Site.Lower.Level));
        Bounds = box;
    }

    /// <summary>The stair they belong to.</summary>
    public Stair Stair { get; }

    /// <summary>The boards, from the bottom up.</summary>
    public ImmutableArray<StringBoard> Boards { get; }

    /// <summary>The parts they become.</summary>
    public IEnumerable<Part> Parts => Boards.Select(b => b.Part);

    /// <summary>+1 when the string climbs to the right on paper, -1 to the left.</summary>
    public int Sense { get; }

    /// <summary>Least station drawn: end of the boards or the newel's centre, mm.</summary>
    public double From { get; }

    /// <summary>Largest station drawn.</summary>
    public double To { get; }

    /// <summary>Pitch points on these boards.</summary>
    public ImmutableArray<PitchPoint> PitchPoints { get; }

    /// <summary>Whether the floor the string stands on is in the picture.</summary>
    public bool HasFloor { get; }

    /// <summary>Height of that floor, mm.</summary>
    public double Floor => Boards[0].Site.Lower.Level;

    /// <summary>Everything drawn, in (u, v); corners of the stock boards may stand out of it a little.</summary>
    public Box2 Bounds { get; }

    /// <summary>Corners the boards meet at, from the bottom up: the station and the id of each; none for a lone board.</summary>
    public ImmutableArray<(double At, string Id)> Corners { get; }

    /// <summary>What the floor it stands on is: the lower floor, or a landing.</summary>
    public string FloorId => ThingId.FloorAt(Stair.Plan, Floor);

    /// <summary>"wall strings in development" of several, the string's name of one.</summary>
    public string Title => Boards.Length == 1 ? Boards[0].Part.Name : (Boards[0].Site.IsWall ? "wall strings" : "newel strings") + " in development";

    /// <summary>A point of the development on the face as looked at.</summary>
    public Point2 At(double s, double z) => new(Sense * s, z);

    /// <summary>All developments of one kind of string.</summary>
    public static IEnumerable<StringView> All(Stair stair, bool wall)
    {
        var strings = stair.Kit.Strings;
        for (var i = 0; i < strings.Length; i++)
        {
            var first = i;
            while (strings[i].Site.Upper.Kind == StringEndKind.CornerThrough) i++;
            if (strings[first].Site.IsWall == wall) yield return new(stair, [.. strings.Skip(first).Take(i - first + 1)]);
        }
    }

    /// <summary>Each board by itself.</summary>
    public IEnumerable<StringView> Apart() => Boards.Select(b => new StringView(Stair, [b]));

    private static double LowEnd(StringBoard board) =>
        board.Site.Lower.Kind == StringEndKind.Newel ? Math.Min(board.Site.Lower.At, board.Outline.Bounds.MinX) : board.Outline.Bounds.MinX;

    private static double HighEnd(StringBoard board) =>
        board.Site.Upper.Kind == StringEndKind.Newel ? Math.Max(board.Site.Upper.At, board.Outline.Bounds.MaxX) : board.Outline.Bounds.MaxX;
}
