namespace Rodwright.Geometry.Solids.Sight;

/// <summary>A face that looks towards the eye, and so may hide what is behind it.</summary>
internal sealed class SightFace
{
    // What stands no further behind a face touches it: chords of a round in a joint part by less, mm.
    private const double Touch = 0.02;

    // What passes a face's outline no further off than this runs along it, mm.
    private const double Beside = 1e-5;

    private readonly Point2[] corners;
    private readonly int[] ends; // one past the last corner of each loop
    private readonly Vector2 slope; // nearness of its plane: level + slope·(x, y)
    private readonly double level;
    private readonly double sine; // between the face and the line of sight

    public SightFace(Solid solid, SolidFace face, int index, ParallelView view)
    {
        Index = index;
        var count = face.Loops.Sum(l => l.Length);
        (corners, ends) = (new Point2[count], new int[1 + face.Holes.Length]);
        var (n, k) = (0, 0);
        Near = double.NegativeInfinity;
        foreach (var loop in face.Loops)
        {
            foreach (var i in loop)
            {
                corners[n++] = view.At(solid.Vertices[i]);
                Near = Math.Max(Near, view.Nearness(solid.Vertices[i]));
            }
            ends[k++] = n;
        }
        Box = Box2.Of(corners);
        sine = view.Eye.Dot(face.Normal);
        var on = solid.Vertices[face.Outer[0]];
        slope = new(-view.Right.Dot(face.Normal) / sine, -view.Up.Dot(face.Normal) / sine);
        level = view.Nearness(on) - slope.Dot(view.At(on) - Point2.Origin);
    }

    /// <summary>Its index among all faces of the scene.</summary>
    public int Index { get; }

    /// <summary>The box round it on the picture.</summary>
    public Box2 Box { get; }

    /// <summary>How near the eye its nearest corner is, mm.</summary>
    public double Near { get; }

    /// <summary>Adds the stretches of a line that it hides, as shares of its length from 0 to 1.</summary>
    /// <param name="line">A line; neither of its own faces may be this one.</param>
    /// <param name="hidden">Takes the stretches.</param>
    /// <param name="work">Room for crossings, reused from call to call.</param>
    public void Hide(SightLine line, List<(double From, double To)> hidden, List<double> work)
    {
        // How far behind the plane the line begins and ends, square to the face: linear between.
        var (behindFrom, behindTo) = (Behind(line.From, line.FromNear), Behind(line.To, line.ToNear));
        if (behindFrom <= Touch && behindTo <= Touch) return;
        var (low, high) = (0.0, 1.0);
        if (behindFrom < 0) low = behindFrom / (behindFrom - behindTo);
        else if (behindTo < 0) high = behindFrom / (behindFrom - behindTo);
        var along = line.To - line.From;
        var length = along.Length;
        var unit = 1 / length * along;
        // Where the line runs along the outline it is passed at either side of it: if one of them is covered, so is the line (or it coincides with the outline's own).
        var isBeside = Cross(line.From, unit, length, -Beside, work);
        Add(low, high, hidden, work);
        if (!isBeside) return;
        Cross(line.From, unit, length, Beside, work);
        Add(low, high, hidden, work);
    }

    private double Behind(Point2 at, double near) => sine * (level + slope.Dot(at - Point2.Origin) - near);

    /// <summary>Where the endless line, moved aside, crosses the outline, in order. Answers whether a corner lies so close to the line that its other side may cross elsewhere.</summary>
    private bool Cross(Point2 from, Vector2 unit, double length, double aside, List<double> crossings)
    {
        crossings.Clear();
        var i = 0;
        var isBeside = false;
        foreach (var end in ends)
        {
            var before = corners[end - 1] - from;
            var sideBefore = unit.Cross(before) - aside;
            for (; i < end; i++)
            {
                var here = corners[i] - from;
                var side = unit.Cross(here) - aside;
                isBeside |= Math.Abs(side + aside) <= Beside;
                if ((side > 0) != (sideBefore > 0))
                {
                    var share = sideBefore / (sideBefore - side);
                    var (x, y) = (unit.Dot(before), unit.Dot(here));
                    crossings.Add((x + share * (y - x)) / length);
                }
                (before, sideBefore) = (here, side);
            }
        }
        crossings.Sort();
        return isBeside;
    }

    private static void Add(double low, double high, List<(double From, double To)> hidden, List<double> crossings)
    {
        for (var i = 0; i + 1 < crossings.Count; i += 2)
        {
            var (from, to) = (Math.Max(low, crossings[i]), Math.Min(high, crossings[i + 1]));
            if (to > from) hidden.Add((from, to));
        }
    }
}
