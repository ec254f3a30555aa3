using Rodwright.Drawings.Formats.Models;
using Rodwright.Drawings.Formats.Part21;
using static Rodwright.Drawings.Formats.Part21.Part21File;

namespace Rodwright.Drawings.Formats.Step;

/// <summary>Products of a STEP file, and how one hangs in another.</summary>
internal sealed class StepProducts
{
    private readonly Part21File file;
    private readonly string application;
    private readonly string mechanical;
    private readonly string design;

    public StepProducts(Part21File file)
    {
        this.file = file;
        application = file.Add("APPLICATION_CONTEXT", Text("core data for automotive mechanical design processes"));
        file.Add("APPLICATION_PROTOCOL_DEFINITION", Text("international standard"), Text("automotive_design"), "2000", application);
        mechanical = file.Add("PRODUCT_CONTEXT", "''", application, Text("mechanical"));
        design = file.Add("PRODUCT_DEFINITION_CONTEXT", Text("part definition"), application, Text("design"));
        var length = file.AddWhole("(LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.))");
        var angle = file.AddWhole("(NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.))");
        var solid = file.AddWhole("(NAMED_UNIT(*) SI_UNIT($,.STERADIAN.) SOLID_ANGLE_UNIT())");
        var exact = file.Add("UNCERTAINTY_MEASURE_WITH_UNIT", "LENGTH_MEASURE(1.E-05)", length, Text("distance_accuracy_value"), Text("points nearer than this are one"));
        Context = file.AddWhole($"(GEOMETRIC_REPRESENTATION_CONTEXT(3) GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT(({exact})) GLOBAL_UNIT_ASSIGNED_CONTEXT(({length},{angle},{solid})) REPRESENTATION_CONTEXT('','3D'))");
    }

    /// <summary>The space and units of every shape.</summary>
    public string Context { get; }

    /// <summary>A product; its definition.</summary>
    public string Add(string id, string name)
    {
        var product = file.Add("PRODUCT", Text(id), Text(name), "''", List(mechanical));
        file.Add("PRODUCT_RELATED_PRODUCT_CATEGORY", Text("part"), "$", List(product));
        return file.Add("PRODUCT_DEFINITION", Text("design"), "''", file.Add("PRODUCT_DEFINITION_FORMATION", "''", "''", product), design);
    }

    /// <summary>Gives a product its shape.</summary>
    public void Shape(string product, string shape) =>
        file.Add("SHAPE_DEFINITION_REPRESENTATION", file.Add("PRODUCT_DEFINITION_SHAPE", "''", "''", product), shape);

    /// <summary>Hangs a piece in the assembly: the placement its shape is drawn in comes to lie on the one where it stands.</summary>
    public void Place(string whole, string assembly, ModelPiece piece, string product, string shape, string from, string to)
    {
        var use = file.Add("NEXT_ASSEMBLY_USAGE_OCCURRENCE", Text(piece.PartId), Text(piece.Name), Text(piece.Mark), whole, product, "$");
        var used = file.Add("PRODUCT_DEFINITION_SHAPE", "''", "''", use);
        var moved = file.Add("ITEM_DEFINED_TRANSFORMATION", "''", "''", from, to);
        var relation = file.AddWhole($"(REPRESENTATION_RELATIONSHIP('','',{shape},{assembly}) REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION({moved}) SHAPE_REPRESENTATION_RELATIONSHIP())");
        file.Add("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION", relation, used);
    }
}
