namespace Rodwright.Geometry.Solids.Sight;

/// <summary>Faces sorted into the squares of the picture they reach into, so that a line meets few of them.</summary>
internal sealed class SightGrid
{
    private const int Most = 64; // squares each way

    private readonly Box2 box;
    private readonly double size;
    private readonly int columns, rows;
    private readonly List<SightFace>[] squares;

    public SightGrid(IReadOnlyList<SightFace> faces)
    {
        box = faces.Aggregate(Box2.Empty, (b, f) => b.With(f.Box));
        if (box.IsEmpty) box = new(0, 0, 0, 0);
        size = Math.Max(1, Math.Max(box.Width, box.Height) / Most);
        (columns, rows) = (1 + (int)(box.Width / size), 1 + (int)(box.Height / size));
        squares = new List<SightFace>[columns * rows];
        for (var i = 0; i < squares.Length; i++) squares[i] = [];
        foreach (var face in faces)
        {
            var (left, low, right, high) = Reach(face.Box);
            for (var y = low; y <= high; y++)
                for (var x = left; x <= right; x++) squares[y * columns + x].Add(face);
        }
    }

    /// <summary>Every face whose box shares room with a box and which comes nearer the eye than given; each once.</summary>
    public void Find(Box2 over, double nearer, List<SightFace> found)
    {
        found.Clear();
        var (left, low, right, high) = Reach(over);
        for (var y = low; y <= high; y++)
        {
            for (var x = left; x <= right; x++)
            {
                foreach (var face in squares[y * columns + x])
                {
                    var f = face.Box;
                    if (face.Near <= nearer || f.MinX > over.MaxX || f.MaxX < over.MinX || f.MinY > over.MaxY || f.MaxY < over.MinY) continue;
                    // It is taken in the first of the squares that both reach into.
                    if (x == Math.Max(left, Column(f.MinX)) && y == Math.Max(low, Row(f.MinY))) found.Add(face);
                }
            }
        }
    }

    private (int Left, int Low, int Right, int High) Reach(Box2 b) => (Column(b.MinX), Row(b.MinY), Column(b.MaxX), Row(b.MaxY));

    private int Column(double x) => Math.Clamp((int)((x - box.MinX) / size), 0, columns - 1);

    private int Row(double y) => Math.Clamp((int)((y - box.MinY) / size), 0, rows - 1);
}
