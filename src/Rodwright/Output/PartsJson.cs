using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Output;

/// <summary>Newels and parts as JSON.</summary>
internal static class PartsJson
{
    /// <summary>Each newel's four faces, with every cut by height above the foot and distance from the face's left arris as one looks at it.</summary>
    public static void Newels(Utf8JsonWriter json, Kit kit)
    {
        json.WriteStartArray("newels");
        foreach (var newel in kit.Parts.Where(p => p.Kind == PartKind.Newel))
        {
            json.WriteStartObject();
            json.WriteString("name", newel.Name);
            json.WriteString("mark", newel.Mark);
            json.WriteNumber("side", newel.Blank.Width);
            json.WriteNumber("length", newel.Blank.Length);
            json.WriteNumber("foot", newel.FaceSide.Frame.Origin.Z);
            json.WriteStartArray("faces");
            for (var i = 0; i < newel.Faces.Length; i++)
            {
                json.WriteStartObject();
                json.WriteString("looks", newel.Faces[i].Looks);
                json.WriteStartArray("features");
                foreach (var cut in newel.Cuts.Where(c => c.Face == i)) Feature(json, cut);
                json.WriteEndArray();
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Feature(Utf8JsonWriter json, Cut cut)
    {
        var box = cut.Shape.Bounds;
        json.WriteStartObject();
        json.WriteString("joint", cut.Joint);
        json.WriteString("shape", Word(cut.Kind));
        json.WriteNumber("depth", cut.Depth);
        Range(json, "heights", box.MinY, box.MaxY);
        Range(json, "fromLeft", box.MinX, box.MaxX);
        if (cut.Kind == CutKind.Bore) json.WriteNumber("diameter", box.Width);
        if (cut.Note.Length > 0) json.WriteString("note", cut.Note);
        json.WriteEndObject();
    }

    public static void Parts(Utf8JsonWriter json, Kit kit)
    {
        json.WriteStartArray("parts");
        foreach (var part in kit.Parts)
        {
            json.WriteStartObject();
            json.WriteString("id", part.Id);
            json.WriteString("name", part.Name);
            json.WriteString("mark", part.Mark);
            json.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(part.Kind.ToString()));
            json.WriteString("material", part.Material);
            Blank(json, part.Blank);
            json.WriteStartArray("faces");
            foreach (var face in part.Faces)
            {
                json.WriteStartObject();
                json.WriteString("looks", face.Looks);
                Frame(json, face.Frame);
                json.WriteNumber("thickness", face.Thickness);
                StairJson.Edge(json, "outline", face.Outline);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("cuts");
            foreach (var cut in part.Cuts)
            {
                json.WriteStartObject();
                json.WriteString("id", cut.Id);
                json.WriteString("kind", Word(cut.Kind));
                json.WriteNumber("face", cut.Face);
                json.WriteNumber("depth", cut.Depth);
                json.WriteString("joint", cut.Joint);
                StairJson.Edge(json, "shape", cut.Shape);
                if (cut.Seat is { } seat) StairJson.Edge(json, "seat", seat);
                if (cut.Note.Length > 0) json.WriteString("note", cut.Note);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    public static void Blank(Utf8JsonWriter json, Blank blank)
    {
        json.WriteStartObject("blank");
        json.WriteNumber("length", blank.Length);
        json.WriteNumber("width", blank.Width);
        json.WriteNumber("thickness", blank.Thickness);
        json.WriteEndObject();
    }

    public static void Jointed(Utf8JsonWriter json, JointedPiece piece)
    {
        json.WriteStartObject();
        json.WriteString("mark", piece.Mark);
        json.WriteString("edge", piece.Edge);
        json.WriteNumber("length", piece.Length);
        json.WriteNumber("width", piece.Width);
        json.WriteString("grain", "along the string");
        json.WriteEndObject();
    }

    private static void Frame(Utf8JsonWriter json, Frame3 frame)
    {
        json.WriteStartObject("frame");
        Triple("origin", frame.Origin.X, frame.Origin.Y, frame.Origin.Z);
        Triple("right", frame.U.X, frame.U.Y, frame.U.Z);
        Triple("up", frame.V.X, frame.V.Y, frame.V.Z);
        Triple("out", frame.W.X, frame.W.Y, frame.W.Z);
        json.WriteEndObject();

        void Triple(string name, double x, double y, double z)
        {
            json.WriteStartArray(name);
            foreach (var value in new[] { x, y, z }) json.WriteNumberValue(value + 0.0);
            json.WriteEndArray();
        }
    }

    private static void Range(Utf8JsonWriter json, string name, double from, double to)
    {
        json.WriteStartArray(name);
        json.WriteNumberValue(from);
        json.WriteNumberValue(to);
        json.WriteEndArray();
    }

    private static string Word(CutKind kind) => kind switch
    {
        CutKind.CornerHousing => "corner housing",
        CutKind.TenonCheek => "tenon cheek",
        CutKind.RoundedEdge => "rounded edge",
        CutKind.Cheek => "tenon cheek",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
