using System.Collections.Immutable;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Drawings.Formats.Part21;
using Rodwright.Geometry;
using static Rodwright.Drawings.Formats.Part21.Part21File;

namespace Rodwright.Drawings.Formats.Step;

/// <summary>
/// Writes pieces as a STEP file (ISO 10303-214, automotive design): an assembly of one product a piece, each a closed solid of flat faces in its own frame, placed where it stands, with its colour. Millimetres.
/// </summary>
public static class StepWriter
{
    /// <summary>What the format's files are called over a network.</summary>
    public const string MediaType = "model/step";

    /// <summary>The file's bytes, the same for the same pieces. Pieces without wood are left out.</summary>
    /// <param name="title">Name of the assembly.</param>
    /// <param name="date">The day it is made.</param>
    /// <param name="pieces">In the order of the parts.</param>
    public static byte[] Write(string title, DateOnly date, IEnumerable<ModelPiece> pieces)
    {
        var file = new Part21File(title, date, "AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }", "Timber stair, one solid a piece");
        var products = new StepProducts(file);
        var whole = products.Add("stair", title);
        var at = StepShapes.Placement(file, new(default, new(1, 0, 0), new(0, 1, 0)));
        var placed = new List<string> { at };
        var parts = new List<(ModelPiece Piece, string Product, string Shape, string From, string To)>();
        foreach (var piece in pieces.Where(p => !p.Shape.Faces.IsEmpty))
        {
            var product = products.Add(piece.PartId, piece.Name);
            var from = StepShapes.Placement(file, new(default, new(1, 0, 0), new(0, 1, 0)));
            var solids = StepShapes.Solids(file, piece.Shape, piece.Name);
            StepLooks.Add(file, solids, piece.Material, products.Context);
            var shape = file.Add("ADVANCED_BREP_SHAPE_REPRESENTATION", Text(piece.Name), List(solids.Prepend(from)), products.Context);
            products.Shape(product, shape);
            var to = StepShapes.Placement(file, piece.Frame);
            placed.Add(to);
            parts.Add((piece, product, shape, from, to));
        }
        var assembly = file.Add("SHAPE_REPRESENTATION", Text(title), List(placed), products.Context);
        products.Shape(whole, assembly);
        foreach (var (piece, product, shape, from, to) in parts) products.Place(whole, assembly, piece, product, shape, from, to);
        return file.Bytes();
    }
}
