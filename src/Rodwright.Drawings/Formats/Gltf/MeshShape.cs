using Rodwright.Drawings.Formats.Models;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>A piece's shape to the nearest thousandth of a millimetre, with its material, by which equal pieces find one another.</summary>
internal sealed class MeshShape : IEquatable<MeshShape>
{
    private const double Steps = 1000;

    private readonly long[] numbers;
    private readonly int hash;

    public MeshShape(ModelPiece piece)
    {
        var solid = piece.Shape;
        Material = piece.Material;
        numbers = new long[solid.Vertices.Length * 3 + solid.Faces.Sum(f => f.Loops.Sum(l => l.Length + 1))];
        var k = 0;
        foreach (var p in solid.Vertices)
        {
            numbers[k++] = (long)Math.Round(p.X * Steps);
            numbers[k++] = (long)Math.Round(p.Y * Steps);
            numbers[k++] = (long)Math.Round(p.Z * Steps);
        }
        foreach (var loop in solid.Faces.SelectMany(f => f.Loops))
        {
            numbers[k++] = -loop.Length;
            foreach (var i in loop) numbers[k++] = i;
        }
        var sum = 17L;
        foreach (var n in numbers) sum = sum * 31 + n;
        hash = (int)(sum ^ sum >> 32);
    }

    private ModelMaterial Material { get; }

    public bool Equals(MeshShape? other) => other is not null && hash == other.hash && Material == other.Material && numbers.AsSpan().SequenceEqual(other.numbers);

    public override bool Equals(object? obj) => Equals(obj as MeshShape);

    public override int GetHashCode() => hash;
}
