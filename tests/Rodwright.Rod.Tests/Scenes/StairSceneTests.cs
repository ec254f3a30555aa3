using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Scenes;
using Rodwright.Rod.Views;
using Rodwright.Testing;
using SharpGLTF.Schema2;
using Xunit;

namespace Rodwright.Rod.Tests.Scenes;

/// <summary>The scene file read back: parts with what the viewer needs, and a room that is never taken for one.</summary>
public class StairSceneTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_part_is_a_node_with_its_cuts_its_way_apart_and_its_grain(string name)
    {
        var stair = RodJobs.Stair(name);
        var nodes = Nodes(name).Where(n => n.Extras["part"] is not null).ToList();
        Assert.Equal(stair.Kit.Parts.Select(p => p.Id), nodes.Select(n => (string)n.Extras["part"]!));
        var apart = TakenApart.Of(stair.Kit);
        foreach (var (part, (node, extras)) in stair.Kit.Parts.Zip(nodes))
        {
            Assert.Equal(part.Name, node.Name);
            Assert.Equal(part.Mark, (string)extras["mark"]!);
            Assert.Equal(part.Kind.ToString(), (string)extras["kind"]!);
            Assert.Equal(apart[part.Id].Select(l => (Math.Round(l.By.X, 3), Math.Round(l.By.Y, 3), l.From, l.To)), extras["apart"]!.AsArray().Select(l => ((double)l![0]!, (double)l[1]!, (double)l[3]!, (double)l[4]!)));
            if (part.Kind is PartKind.Riser or PartKind.TaperedRiser) Assert.True((bool)extras["sheet"]!);
            else Assert.Equal(1, Vector(extras["grain"]!).Length, 1e-3);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Cuts_lie_on_the_faces_they_name_with_their_outline_and_depth(string name)
    {
        var stair = RodJobs.Stair(name);
        foreach (var (_, extras) in Nodes(name).Where(n => n.Extras["part"] is not null))
        {
            var part = stair.Kit.Find((string)extras["part"]!);
            var wanted = part.Cuts.Where(c => c.Kind != CutKind.RoundedEdge).ToList();
            Assert.Equal(wanted.Select(c => (c.Id, c.Face)), extras["cuts"]!.AsArray().Select(c => ((string)c!["id"]!, (int)c["face"]!)));
            foreach (var (cut, text) in wanted.Zip(extras["cuts"]!.AsArray()))
            {
                Assert.Equal(cut.Depth, (double)text!["depth"]!, 1e-3);
                var numbers = extras["faces"]![cut.Face]!.AsArray().Select(n => (double)n!).ToList();
                var frame = new Frame3(World(part, new(numbers[0], numbers[1], numbers[2])), Turned(part, new(numbers[3], numbers[4], numbers[5])), Turned(part, new(numbers[6], numbers[7], numbers[8])));
                var outline = text["outline"]!.AsArray().Select(n => (double)n!).ToList();
                // As it is told, each corner of the outline stands in the world where the part has it.
                for (var i = 0; i < outline.Count; i += 2)
                {
                    var (at, w) = part.Faces[cut.Face].Frame.ToLocal(frame.ToWorld(new(outline[i], outline[i + 1])));
                    Assert.Equal(0, w, 1e-2);
                    Assert.True(cut.Shape.DistanceTo(at) < 1e-2, $"{part.Id}/{cut.Id}");
                }
                Assert.Equal(1, ConvexClip.Area([.. Enumerable.Range(0, outline.Count / 2).Select(i => new Point2(outline[2 * i], outline[2 * i + 1]))]) / Math.Abs(cut.Shape.Area), 0.05);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_room_has_floors_walls_and_no_parts_and_nothing_of_the_stair_stands_in_it(string name)
    {
        var stair = RodJobs.Stair(name);
        var room = Room.Of(stair);
        var nodes = Nodes(name).Where(n => n.Extras["room"] is not null).ToList();
        Assert.Equal(room.Select(r => r.Name), nodes.Select(n => n.Node.Name));
        Assert.All(nodes, n => Assert.Null(n.Extras["part"]));
        Assert.Equal(room.Length, room.Select(r => r.Name).Distinct().Count());
        Assert.Empty(room.Select(r => r.Name).Intersect(stair.Kit.Parts.Select(p => p.Name)));
        Assert.Equal(new PlanView(stair).Walls.Sum(w => w.EdgeCount), room.Count(r => r.Kind == "wall"));
        Assert.Single(room, r => r.Kind == "floor");
        Assert.Contains(room, r => r.Kind == "upper floor");
        Assert.Equal(stair.Plan.Steps.Contains(Stairs.Plans.StepKind.Landing), room.Any(r => r.Kind == "landing"));
        foreach (var piece in room)
        {
            Assert.True(piece.Shape.IsWatertight, piece.Name);
            var within = new Within(piece.Shape);
            foreach (var solid in Joinery.Solids.KitSolids.Of(stair.Kit, 0.3))
                foreach (var corner in solid.InWorld.Vertices)
                    Assert.True(within.DepthOf(corner) < 0.5, $"{solid.Part.Id} stands in the {piece.Name} at {corner}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_upper_floor_is_level_with_the_nosing_piece_and_begins_at_the_trimmer(string name)
    {
        var stair = RodJobs.Stair(name);
        var floors = Room.Of(stair).Where(r => r.Kind == "upper floor").ToList();
        Assert.Equal(stair.Plan.Risers * stair.Plan.Rise, floors.Max(f => f.Shape.Bounds.Max.Z), 1e-6);
        var last = stair.Plan.Riser(stair.Plan.Risers);
        var trimmer = floors.SelectMany(f => f.Shape.Vertices).Min(v => (v.Plan - last.Walking).Dot(last.Up));
        Assert.Equal(stair.Job.Practice.Riser + stair.Job.Practice.Packing, trimmer, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Bench_marks_lie_on_the_face_side_with_their_foot_on_the_face_edge_clear_of_every_cut(string name)
    {
        foreach (var part in RodJobs.Stair(name).Kit.Parts)
        {
            var places = BenchPlaces.Of(part);
            var face = part.Kind == PartKind.Newel ? part.Faces[BenchFaces.OfNewel(part).Side] : part.FaceSide;
            foreach (var place in new[] { places.Side, places.Edge, places.Letters }.OfType<BenchPlace>())
            {
                Assert.Equal((1, 1, 0), (Math.Round(place.Right.Length, 9), Math.Round(place.Up.Length, 9), Math.Round(place.Right.Dot(place.Up), 9) + 0));
                Assert.InRange(place.Height, 4, 80);
            }
            // The loop: on the face side's plane, looking out of it, its foot where the flat of the face ends.
            var (at, w) = face.Frame.ToLocal(World(part, places.Side.At));
            Assert.Equal(0, w, 1e-6);
            Assert.Equal(1, Turned(part, places.Side.Right.Cross(places.Side.Up)).Dot(face.Frame.W), 1e-9);
            Assert.Equal(places.Edge.Round, face.Outline.DistanceTo(at), 1e-6);
            Assert.Equal(places.Side.At, places.Edge.At);
            var middle = face.Frame.ToLocal(World(part, places.Side.At + 0.5 * places.Side.Height * places.Side.Up)).Face;
            Assert.True(face.Outline.Holds(middle), part.Id);
            var index = part.Faces.IndexOf(face);
            Assert.All(part.Cuts.Where(c => c.Face == index && c.Beneath == 0 && c.Kind != CutKind.RoundedEdge), c => Assert.False(c.Shape.Holds(middle), $"{part.Id}: in {c.Id}"));
            // The tick: on the other side of the arris, looking away from the wood.
            if (places.Edge.Round == 0) Assert.Equal(1, places.Edge.Right.Cross(places.Edge.Up).Dot(-places.Side.Up), 1e-9);
        }
    }

    [Fact]
    public void Marks_on_a_newel_read_the_same_on_both_hands()
    {
        var kit = RodJobs.Stair("left-kite-low").Kit;
        foreach (var part in kit.Parts.Where(p => p.Kind == PartKind.Newel)) Assert.Equal(BenchPlaces.Of(part).Side.Height, BenchPlaces.Of(part.Mirrored()).Side.Height);
    }

    [Fact]
    public void Views_are_where_one_stands_and_strokes_are_one_high()
    {
        var root = ModelRoot.ParseGLB(StairScene.Write(RodJobs.Stair("left-kite-low")).Bytes.ToArray()).DefaultScene.VisualChildren.Single();
        var views = root.Extras!["views"]!;
        Assert.Equal((0, -1, 0), At(views["front"]!));
        Assert.Equal((-1, 0, 0), At(views["side"]!));
        Assert.Equal((0, 0, 1), At(views["plan"]!));
        // The kite's walls stand to the right and behind: one looks from the left, the foot and above.
        var (x, y, z) = At(views["three-quarter"]!);
        Assert.True(x < -0.3 && y < -0.3 && z > 0.3);
        foreach (var stroke in new[] { "side", "edge" })
        {
            var numbers = root.Extras!["strokes"]![stroke]!.AsArray().Select(n => (double)n!).ToList();
            Assert.InRange(Enumerable.Range(0, numbers.Count / 2).Max(i => numbers[2 * i + 1]), 0.85, 1.001);
            Assert.Contains(Enumerable.Range(0, numbers.Count / 2), i => numbers[2 * i] == 0 && numbers[2 * i + 1] == 0);
        }
    }

    [Fact]
    public void The_same_stair_gives_the_same_bytes()
    {
        var stair = RodJobs.Stair("quarter-landing");
        Assert.True(StairScene.Write(stair).Bytes.Span.SequenceEqual(StairScene.Write(stair).Bytes.Span));
    }

    private static List<(Node Node, JsonNode Extras)> Nodes(string name)
    {
        var root = ModelRoot.ParseGLB(StairScene.Write(RodJobs.Stair(name)).Bytes.ToArray()).DefaultScene.VisualChildren.Single();
        return [.. root.VisualChildren.Select(n => (n, n.Extras!))];
    }

    private static Vector3 Vector(JsonNode numbers) => new((double)numbers[0]!, (double)numbers[1]!, (double)numbers[2]!);

    private static (double X, double Y, double Z) At(JsonNode numbers) => (Vector(numbers).X, Vector(numbers).Y, Vector(numbers).Z);

    private static Point3 World(Part part, Point3 p) => part.FaceSide.Frame.ToWorld(new(p.X, p.Y), p.Z);

    private static Vector3 Turned(Part part, Vector3 v) => v.X * part.FaceSide.Frame.U + v.Y * part.FaceSide.Frame.V + v.Z * part.FaceSide.Frame.W;
}
