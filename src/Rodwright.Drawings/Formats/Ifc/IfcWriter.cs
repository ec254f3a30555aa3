using Rodwright.Drawings.Formats.Models;
using Rodwright.Drawings.Formats.Part21;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using static Rodwright.Drawings.Formats.Part21.Part21File;

namespace Rodwright.Drawings.Formats.Ifc;

/// <summary>
/// Writes a building element put together from pieces as an IFC4 file (ISO 16739-1:2018, reference view of one site, building and storey): each piece a closed body of flat faces in its own placement,
/// with its material. Millimetres.
/// </summary>
public static class IfcWriter
{
    /// <summary>What the format's files are called over a network.</summary>
    public const string MediaType = "application/x-step";

    /// <summary>The file's bytes, the same for the same model. Pieces without wood are left out.</summary>
    public static byte[] Write(IfcModel model)
    {
        var file = new Part21File(model.Title, model.Date, "IFC4", "ViewDefinition [ReferenceView_V1.2]");
        var ground = Axis(file, new(default, new(1, 0, 0), new(0, 1, 0)));
        var context = file.Add("IFCGEOMETRICREPRESENTATIONCONTEXT", "$", Text("Model"), "3", "1.E-05", ground, "$");
        var units = file.Add("IFCUNITASSIGNMENT", List(
            file.Add("IFCSIUNIT", "*", ".LENGTHUNIT.", ".MILLI.", ".METRE."), file.Add("IFCSIUNIT", "*", ".AREAUNIT.", "$", ".SQUARE_METRE."),
            file.Add("IFCSIUNIT", "*", ".VOLUMEUNIT.", "$", ".CUBIC_METRE."), file.Add("IFCSIUNIT", "*", ".PLANEANGLEUNIT.", "$", ".RADIAN.")));
        var project = file.Add("IFCPROJECT", Id("project"), "$", Text(model.Title), "$", "$", "$", "$", List(context), units);
        var at = file.Add("IFCLOCALPLACEMENT", "$", ground);
        var site = file.Add("IFCSITE", Id("site"), "$", Text("Site"), "$", "$", at, "$", "$", ".ELEMENT.", "$", "$", "$", "$", "$");
        var building = file.Add("IFCBUILDING", Id("building"), "$", Text("Building"), "$", "$", at, "$", "$", ".ELEMENT.", "$", "$", "$");
        var storey = file.Add("IFCBUILDINGSTOREY", Id("storey"), "$", Text("Lower floor"), "$", "$", at, "$", "$", ".ELEMENT.", "0.");
        Aggregate("project", project, [site]);
        Aggregate("site", site, [building]);
        Aggregate("building", building, [storey]);
        var whole = file.Add(model.Entity, Id("whole"), "$", Text(model.Title), "$", Text(model.ObjectType), at, "$", "$", $".{model.Type}.");
        file.Add("IFCRELCONTAINEDINSPATIALSTRUCTURE", Id("in storey"), "$", "$", "$", List(whole), storey);
        var elements = model.Elements.Where(e => !e.Piece.Shape.Faces.IsEmpty).Select(e => (e.Piece.Material, Line: Element(e))).ToList();
        Aggregate("whole", whole, elements.Select(e => e.Line));
        foreach (var made in elements.GroupBy(e => e.Material.Name))
            file.Add("IFCRELASSOCIATESMATERIAL", Id("material/" + made.Key), "$", "$", "$", List(made.Select(e => e.Line)), file.Add("IFCMATERIAL", Text(made.Key), "$", Text("wood")));
        var properties = model.Properties.Select(p => file.Add("IFCPROPERTYSINGLEVALUE", Text(p.Name), "$", $"{p.Measure}({(p.Measure == "IFCCOUNTMEASURE" ? Number.Print(p.Value, 0) : Real(p.Value))})", "$")).ToList();
        file.Add("IFCRELDEFINESBYPROPERTIES", Id("has properties"), "$", "$", "$", List(whole), file.Add("IFCPROPERTYSET", Id("properties"), "$", Text(model.PropertySet), "$", List(properties)));
        return file.Bytes();

        string Id(string what) => Text(IfcGlobalId.Of($"{model.Title}/{what}"));

        void Aggregate(string what, string from, IEnumerable<string> parts) => file.Add("IFCRELAGGREGATES", Id("parts of " + what), "$", "$", "$", from, List(parts));

        string Element(IfcElement element)
        {
            var piece = element.Piece;
            var bodies = Bodies(file, piece.Shape);
            foreach (var body in bodies) Look(file, body, piece.Material);
            var shape = file.Add("IFCPRODUCTDEFINITIONSHAPE", "$", "$", List(file.Add("IFCSHAPEREPRESENTATION", context, Text("Body"), Text("Brep"), List(bodies))));
            var placed = file.Add("IFCLOCALPLACEMENT", at, Axis(file, piece.Frame));
            return file.Add(element.Entity, Id("part/" + piece.PartId), "$", Text(piece.Name), "$", Text(element.ObjectType), placed, shape, Text(piece.Mark), $".{element.Type}.");
        }
    }

    private static string Axis(Part21File file, Frame3 frame) => file.Add("IFCAXIS2PLACEMENT3D", Point(file, frame.Origin), Direction(file, frame.W), Direction(file, frame.U));

    private static List<string> Bodies(Part21File file, Solid shape)
    {
        var points = shape.Vertices.Select(p => Point(file, p)).ToList();
        return [.. SolidShells.Of(shape).Select(shell => file.Add("IFCFACETEDBREP", file.Add("IFCCLOSEDSHELL", List(shell.Select(f => Face(shape.Faces[f]))))))];

        string Face(SolidFace face) => file.Add("IFCFACE", List(face.Loops.Select((loop, i) =>
            file.Add(i == 0 ? "IFCFACEOUTERBOUND" : "IFCFACEBOUND", file.Add("IFCPOLYLOOP", List(loop.Select(v => points[v]))), ".T."))));
    }

    private static void Look(Part21File file, string body, ModelMaterial material)
    {
        var colour = file.Add("IFCCOLOURRGB", Text(material.Name), Real(material.Red), Real(material.Green), Real(material.Blue));
        var style = file.Add("IFCSURFACESTYLE", Text(material.Name), ".BOTH.", List(file.Add("IFCSURFACESTYLESHADING", colour, "0.")));
        file.Add("IFCSTYLEDITEM", body, List(style), "$");
    }

    private static string Point(Part21File file, Point3 p) => file.Add("IFCCARTESIANPOINT", List(Real(p.X), Real(p.Y), Real(p.Z)));

    private static string Direction(Part21File file, Vector3 d) => file.Add("IFCDIRECTION", List(Real(d.X), Real(d.Y), Real(d.Z)));
}
