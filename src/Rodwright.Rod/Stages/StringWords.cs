using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>Directions, datums and the base line of one development, as seen looking at the face side.</summary>
internal sealed class StringWords
{
    public StringWords(StringView view)
    {
        View = view;
        var first = view.Boards[0].Site;
        var lower = view.PitchPoints[0];
        Base = view.HasFloor ? view.Floor : lower.At.Y;
        BaseName = view.HasFloor ? "the floor line" : "the base line";
        var datum = view.PitchPoints.FirstOrDefault(p => Math.Abs(p.At.X) < 0.001);
        Datum = first.Lower.Kind == StringEndKind.Newel ? $"the {Newel(first.Lower.Newel)}'s centre line" : datum is null ? "the first riser's line" : $"{Riser(datum.Riser)}'s line";
    }

    public StringView View { get; }

    /// <summary>Height of the level line everything is measured up from.</summary>
    public double Base { get; }

    public string BaseName { get; }

    /// <summary>What s is measured from.</summary>
    public string Datum { get; }

    public string Name => View.Boards.Length == 1 ? View.Boards[0].Part.Name : View.Boards[0].Site.IsWall ? "wall strings" : "newel strings";

    /// <summary>A station as a distance from the datum.</summary>
    public Measure Along(double s, string label = "along") => new(Datum, Math.Abs(s), Math.Abs(s) < 0.05 ? "along, that is on the line itself" : Way(s >= 0), label, s < -0.05);

    /// <summary>A height as a distance from the base line.</summary>
    public Measure Up(double z, string label = "up") => new(BaseName, Math.Abs(z - Base), z >= Base - 0.05 ? "up" : "down", label, z < Base - 0.05);

    /// <summary>"to the right, up the stair".</summary>
    public string Way(bool up) => $"{(up == View.Sense > 0 ? "to the right" : "to the left")}, {(up ? "up" : "down")} the stair";

    /// <summary>The corner a board ends at: "corner of the room", or of several "second corner of the room".</summary>
    public string Corner(StringBoard board) => TurnPlaces.CornerName(View.Stair.Plan, board.Site.Face.At(board.Site.Upper.At));

    public string Newel(string id) => View.Stair.Plan.Newels.First(n => n.Id == id).Name;

    public static Path2 Plumb(double s, double from, double to) => Path2.Polyline(new Point2(s, from), new Point2(s, to));
}
