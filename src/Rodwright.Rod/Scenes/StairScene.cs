using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Gltf;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Scenes;

/// <summary>
/// The stair in its room for a viewer, as binary glTF. Every part is a node with the extras <c>part</c> (its id), <c>mark</c>, <c>kind</c>, <c>grain</c> (direction) or
/// <c>sheet</c> (true), <c>faces</c> (frames: origin, u, v) and <c>cuts</c> (id, face, depth, outline), <c>apart</c> (its way when the stair is taken apart: rows of dx, dy, dz,
/// from, to, in the world of the stair) and <c>bench</c> (places of the bench marks: side, edge, letters). A piece of the room has <c>room</c> (its
/// kind) and <c>looks</c> (direction) instead, and no part. The root has <c>views</c>, directions from the stair to the eye, and <c>strokes</c>, the shapes of the bench marks.
/// Points and directions of a part are in its own frame, millimetres.
/// </summary>
public static class StairScene
{
    /// <summary>How far chords may leave their arcs in what is drawn on a screen, mm.</summary>
    public const double Chord = 0.03;

    // Plain tones, linear.
    private static readonly ModelMaterial Floor = new("floor", 0.62, 0.58, 0.52), Wall = new("wall", 0.78, 0.75, 0.70);

    /// <summary>The file scene.glb.</summary>
    public static WrittenFile Write(Stair stair)
    {
        var apart = TakenApart.Of(stair.Kit);
        var room = Room.Of(stair);
        List<ModelPiece> pieces = [.. KitSolids.Of(stair.Kit, Chord).AsParallel().AsOrdered().Select(s => Piece(s, apart[s.Part.Id])), .. room.Select(Piece)];
        return new("scene.glb", "model/gltf-binary", GlbWriter.WriteDrawn(stair.Job.Title, pieces, Whole(stair, room)));
    }

    private static ModelPiece Piece(PlacedSolid solid, ImmutableArray<Leg> apart) =>
        new(solid.Part.Id, solid.Part.Mark, solid.Part.Name, solid.Shape, solid.Frame, PartLook.Of(solid.Part)) { Extras = Extras(solid.Part, apart) };

    private static ModelPiece Piece(RoomPiece room) =>
        new("", "", room.Name, room.Shape, new(default, new(1, 0, 0), new(0, 1, 0)), room.Kind == "wall" ? Wall : Floor)
        {
            Extras = SceneText.Fixed(new() { ["room"] = room.Kind, ["looks"] = SceneText.Of(room.Looks) }),
        };

    private static JsonElement Extras(Part part, ImmutableArray<Leg> apart)
    {
        var bench = BenchPlaces.Of(part);
        var grain = part.Blank.Grain;
        var extras = new JsonObject
        {
            ["kind"] = part.Kind.ToString(),
            ["faces"] = CutOutlines.Faces(part),
            ["cuts"] = CutOutlines.Of(part),
            ["apart"] = new JsonArray([.. apart.Select(l => (JsonNode)SceneText.Of(l.By.X, l.By.Y, l.By.Z, l.From, l.To))]),
            ["bench"] = new JsonObject { ["side"] = Place(bench.Side), ["edge"] = Place(bench.Edge), ["letters"] = bench.Letters is { } letters ? Place(letters) : null },
        };
        if (PartLook.IsSheet(part)) extras["sheet"] = true;
        else extras["grain"] = SceneText.Of(grain.X, grain.Y, 0);
        return SceneText.Fixed(extras);
    }

    private static JsonObject Place(BenchPlace place) => new()
    {
        ["at"] = SceneText.Of(place.At), ["right"] = SceneText.Of(place.Right), ["up"] = SceneText.Of(place.Up),
        ["height"] = Math.Round(place.Height, 3), ["round"] = Math.Round(place.Round, 3),
    };

    /// <summary>Views as one stands: up the first flight, from its open side, from above with the first flight climbing up the picture, and from the corner opposite the walls.</summary>
    private static JsonElement Whole(Stair stair, ImmutableArray<RoomPiece> room)
    {
        var first = stair.Plan.Riser(1);
        var across = (first.Inner - first.Outer).Unit;
        var open = room.Where(r => r.Kind == "wall").Aggregate(Vector3.Level(across), (sum, r) => sum + r.Looks);
        var level = new Vector2(open.X, open.Y);
        if (level.Length < 0.5) level = across;
        var threeQuarter = level.Unit + (stair.Plan.Turn is null ? 1.1 : 0.6) * new Vector2(-first.Up.X, -first.Up.Y);
        return SceneText.Fixed(new()
        {
            ["views"] = new JsonObject
            {
                ["front"] = SceneText.Of(-first.Up.X, -first.Up.Y, 0), ["side"] = SceneText.Of(across.X, across.Y, 0), ["plan"] = SceneText.Of(0, 0, 1),
                ["three-quarter"] = SceneText.Of(threeQuarter.Unit.X, threeQuarter.Unit.Y, 0.62),
            },
            ["strokes"] = new JsonObject
            {
                ["side"] = Stroke(BenchMarks.FaceSide(Point2.Origin, 1).Path), ["edge"] = Stroke(BenchMarks.FaceEdge(Point2.Origin, new(0, -1), 1).Path),
            },
        });
    }

    /// <summary>A mark one high, its foot at the origin: x, y in turn.</summary>
    private static JsonArray Stroke(Path2 path) => SceneText.Of(path.Flattened(0.01).SelectMany(p => new[] { p.X, p.Y }));
}
