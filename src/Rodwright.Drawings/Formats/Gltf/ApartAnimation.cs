using System.Numerics;
using Rodwright.Drawings.Formats.Models;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>
/// The exploded view as an animation, which every viewer of the format plays and can hold anywhere: at its beginning every piece is in its true position, at its end the model is all
/// apart. Ways are straight, so that the format's linear steps from one place to the next are exact.
/// </summary>
internal static class ApartAnimation
{
    /// <summary>The animation's name.</summary>
    public const string Name = "taken apart";

    /// <summary>How long it takes, s: slow enough to follow one piece.</summary>
    public const float Seconds = 6;

    /// <summary>Adds it where any piece moves.</summary>
    public static void Add(ModelRoot model, IEnumerable<(Node Node, ModelPiece Piece)> placed)
    {
        Animation? animation = null;
        foreach (var (node, piece) in placed.Where(p => !p.Piece.Apart.IsEmpty))
            (animation ??= model.CreateAnimation(Name)).CreateTranslationChannel(node, Places(piece));
    }

    private static Dictionary<float, Vector3> Places(ModelPiece piece)
    {
        var times = piece.Apart.SelectMany(s => new[] { s.From, s.To }).Append(0).Append(1).Distinct().Order();
        return times.ToDictionary(t => (float)t * Seconds, t =>
        {
            var at = piece.Apart.Aggregate(piece.Frame.Origin, (p, stretch) => p + stretch.At(t));
            return new Vector3((float)at.X, (float)at.Y, (float)at.Z);
        });
    }
}
