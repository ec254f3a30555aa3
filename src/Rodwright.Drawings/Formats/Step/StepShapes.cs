using Rodwright.Drawings.Formats.Part21;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using static Rodwright.Drawings.Formats.Part21.Part21File;

namespace Rodwright.Drawings.Formats.Step;

/// <summary>The boundary of a solid as STEP has it: faces in planes, bounded by edges that two faces share.</summary>
internal static class StepShapes
{
    /// <summary>A frame: its origin, the way out of it and the way to its right.</summary>
    public static string Placement(Part21File file, Frame3 frame) =>
        file.Add("AXIS2_PLACEMENT_3D", "''", Point(file, frame.Origin), Direction(file, frame.W), Direction(file, frame.U));

    /// <summary>A solid for each body that hangs together; most pieces are one.</summary>
    public static IReadOnlyList<string> Solids(Part21File file, Solid shape, string name)
    {
        var points = new string?[shape.Vertices.Length];
        var corners = new string?[shape.Vertices.Length];
        var ways = new Dictionary<string, string>();
        var edges = new Dictionary<(int, int), string>();
        return [.. SolidShells.Of(shape).Select(shell =>
            file.Add("MANIFOLD_SOLID_BREP", Text(name), file.Add("CLOSED_SHELL", "''", List(shell.Select(f => Face(shape.Faces[f]))))))];

        string Face(SolidFace face)
        {
            var bounds = face.Loops.Select((loop, i) => file.Add(i == 0 ? "FACE_OUTER_BOUND" : "FACE_BOUND", "''",
                file.Add("EDGE_LOOP", "''", List(loop.Select((from, k) => Edge(from, loop[(k + 1) % loop.Length])))), ".T."));
            var plane = file.Add("PLANE", "''", file.Add("AXIS2_PLACEMENT_3D", "''", At(face.Outer[0]), Way(face.Normal), Way(shape.Vertices[face.Outer[1]] - shape.Vertices[face.Outer[0]])));
            return file.Add("ADVANCED_FACE", "''", List(bounds), plane, ".T.");
        }

        string Edge(int from, int to)
        {
            var forward = from < to;
            var key = forward ? (from, to) : (to, from);
            if (!edges.TryGetValue(key, out var curve))
            {
                var line = file.Add("LINE", "''", At(key.Item1), file.Add("VECTOR", "''", Way(shape.Vertices[key.Item2] - shape.Vertices[key.Item1]), "1."));
                edges[key] = curve = file.Add("EDGE_CURVE", "''", Corner(key.Item1), Corner(key.Item2), line, ".T.");
            }
            return file.Add("ORIENTED_EDGE", "''", "*", "*", curve, forward ? ".T." : ".F.");
        }

        string Corner(int i) => corners[i] ??= file.Add("VERTEX_POINT", "''", At(i));

        string At(int i) => points[i] ??= Point(file, shape.Vertices[i]);

        // Faces and edges of a board run the same few ways.
        string Way(Vector3 along)
        {
            var unit = Ratios(1 / along.Length * along);
            return ways.TryGetValue(unit, out var known) ? known : ways[unit] = file.Add("DIRECTION", "''", unit);
        }
    }

    private static string Point(Part21File file, Point3 p) => file.Add("CARTESIAN_POINT", "''", List(Real(p.X), Real(p.Y), Real(p.Z)));

    private static string Direction(Part21File file, Vector3 d) => file.Add("DIRECTION", "''", Ratios(d));

    private static string Ratios(Vector3 d) => List(Real(d.X), Real(d.Y), Real(d.Z));
}
