using System.Collections.Immutable;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Gltf;
using Rodwright.Drawings.Formats.Ifc;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Drawings.Formats.Step;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Scenes;

namespace Rodwright.Rod.Packs;

/// <summary>The stair as a solid model in three open formats: each part by its name, where it stands, with all its cuts.</summary>
public static class StairModel
{
    /// <summary>The file stair.glb: for browsers and viewers. Every piece in its true position; its animation takes the stair apart.</summary>
    public static WrittenFile Glb(Stair stair) => Glb(stair, Pieces(stair));

    /// <summary>The file stair.step: one solid a piece, for drawing and machining programs.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="date">Told in the file.</param>
    public static WrittenFile Step(Stair stair, DateOnly date) => Step(stair, date, Pieces(stair));

    /// <summary>The file stair.ifc: an IfcStair with its parts, for the building's model.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="date">Told in the file.</param>
    public static WrittenFile Ifc(Stair stair, DateOnly date) => Ifc(stair, date, Pieces(stair));

    /// <summary>All three, from solids made once.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="date">Told in the files.</param>
    public static ImmutableArray<WrittenFile> All(Stair stair, DateOnly date)
    {
        var pieces = Pieces(stair);
        var files = new Func<WrittenFile>[] { () => Glb(stair, pieces), () => Step(stair, date, pieces), () => Ifc(stair, date, pieces) };
        return [.. files.AsParallel().AsOrdered().Select(f => f())];
    }

    private static ImmutableArray<ModelPiece> Pieces(Stair stair) =>
        [.. stair.Kit.Parts.AsParallel().AsOrdered().Select(p => new ModelPiece(p.Id, p.Mark, p.Name, PartSolid.Of(p), p.FaceSide.Frame, PartLook.Of(p)))];

    private static ModelPiece Moving(ModelPiece piece, IReadOnlyDictionary<string, ImmutableArray<Leg>> apart) =>
        piece with { Apart = [.. apart[piece.PartId].Where(l => l.By.Length > Tolerance.Same).Select(l => new ModelStretch(l.By, l.From, l.To))] };

    private static WrittenFile Glb(Stair stair, ImmutableArray<ModelPiece> pieces)
    {
        var apart = TakenApart.Of(stair.Kit);
        return new("stair.glb", "model/gltf-binary", GlbWriter.Write(stair.Job.Title, [.. pieces.Select(p => Moving(p, apart))]));
    }

    private static WrittenFile Step(Stair stair, DateOnly date, ImmutableArray<ModelPiece> pieces) => new("stair.step", StepWriter.MediaType, StepWriter.Write(stair.Job.Title, date, pieces));

    private static WrittenFile Ifc(Stair stair, DateOnly date, ImmutableArray<ModelPiece> pieces) => new("stair.ifc", IfcWriter.MediaType, IfcWriter.Write(StairAsIfc.Of(stair, date, pieces)));
}
