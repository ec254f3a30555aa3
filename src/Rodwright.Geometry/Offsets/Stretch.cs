namespace Rodwright.Geometry.Offsets;

/// <summary>One straight edge or arc with its ends: what outlines are taken apart into and put together from.</summary>
internal readonly struct Stretch
{
    private readonly Arc2 arc;

    public Stretch(Point2 from, Point2 to, double bulge)
    {
        (From, To, Bulge) = (from, to, bulge);
        if (bulge != 0) arc = Arc2.FromBulge(from, to, bulge);
        Box = (bulge == 0 ? Box2.Empty.With(from).With(to) : new Path2([new(from, bulge), new(to)], false).Bounds).Grown(1e-6);
    }

    public Point2 From { get; }

    public Point2 To { get; }

    public double Bulge { get; }

    public Box2 Box { get; }

    public bool IsStraight => Bulge == 0;

    public Point2 Centre => arc.Centre;

    public double Radius => arc.Radius;

    public double Length => IsStraight ? From.DistanceTo(To) : arc.Length;

    public Stretch Reversed => new(To, From, -Bulge);

    /// <summary>Unit direction in which it leaves its start.</summary>
    public Vector2 Leaving => IsStraight ? (To - From).Unit : Math.Sign(Bulge) * (From - Centre).Unit.Left;

    /// <summary>Unit direction in which it arrives at its end.</summary>
    public Vector2 Arriving => IsStraight ? (To - From).Unit : Math.Sign(Bulge) * (To - Centre).Unit.Left;

    /// <summary>A point a part of the way along.</summary>
    public Point2 At(double part) => part <= 0 ? From : part >= 1 ? To : IsStraight ? From.Towards(To, part) : arc.At(part);

    /// <summary>What lies between two parts of the way.</summary>
    public Stretch Between(double a, double b) => new(At(a), At(b), IsStraight ? 0 : Angle.Tan(arc.Sweep * (b - a) / 4));

    /// <summary>Which part of the way along a point lies that is on the line or circle; null when it lies off the stretch by more than <paramref name="near"/>.</summary>
    public double? PartOf(Point2 p, double near)
    {
        if (p.DistanceTo(From) <= near) return 0;
        if (p.DistanceTo(To) <= near) return 1;
        double part;
        if (IsStraight) part = (p - From).Dot(To - From) / (To - From).Dot(To - From);
        else
        {
            var turn = Math.IEEERemainder((p - Centre).Direction - arc.Start, 2 * Math.PI);
            if (turn * arc.Sweep < 0) turn += Math.Sign(arc.Sweep) * 2 * Math.PI;
            part = turn / arc.Sweep;
        }
        return part is > 0 and < 1 && At(part).DistanceTo(p) <= near ? part : null;
    }

    /// <summary>Distance of a point from the nearest of it.</summary>
    public double DistanceTo(Point2 p)
    {
        if (!IsStraight) return new ChordArc(From, To, Bulge).DistanceTo(p);
        var along = To - From;
        return p.DistanceTo(From + Math.Clamp((p - From).Dot(along) / along.Dot(along), 0, 1) * along);
    }

    /// <summary>Where two stretches meet or cross.</summary>
    public IEnumerable<Point2> Meets(Stretch other)
    {
        const double near = 1e-6;
        var (mine, theirs) = (this, other);
        return Candidates(mine, theirs).Where(p => mine.PartOf(p, near) is not null && theirs.PartOf(p, near) is not null);
    }

    private static IEnumerable<Point2> Candidates(Stretch a, Stretch b)
    {
        // Ends that touch: two stretches that run along one another meet nowhere else.
        foreach (var p in (Point2[])[a.From, a.To, b.From, b.To]) yield return p;
        if (a.IsStraight && b.IsStraight)
        {
            if (Line2.Between(a.From, a.To).Cross(Line2.Between(b.From, b.To)) is { } p) yield return p;
        }
        else if (a.IsStraight || b.IsStraight)
        {
            var (line, round) = a.IsStraight ? (a, b) : (b, a);
            var along = (line.To - line.From).Unit;
            var middle = line.From.Towards(line.To, 0.5);
            foreach (var far in new ChordArc(round.From, round.To, round.Bulge).Crossings(middle, along)) yield return middle + far * along;
        }
        else
        {
            if (a.Radius > b.Radius) (a, b) = (b, a); // measured from the small circle, for the other's centre may lie far off
            var apart = a.Centre.DistanceTo(b.Centre);
            if (apart < 1e-9 || apart > a.Radius + b.Radius + 1e-9 || apart < Math.Abs(a.Radius - b.Radius) - 1e-9) yield break;
            var along = (b.Centre - a.Centre).Unit;
            var to = (apart + (a.Radius - b.Radius) * (a.Radius + b.Radius) / apart) / 2;
            var half = Math.Sqrt(Math.Max(0, (a.Radius - to) * (a.Radius + to)));
            yield return a.Centre + to * along + half * along.Left;
            yield return a.Centre + to * along - half * along.Left;
        }
    }
}
