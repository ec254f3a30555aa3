using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Builds the inner and outer boundary of a plan, left-hand frame.</summary>
internal static class Boundaries
{
    public static Boundary Inner(PlanShape shape)
    {
        var (h, f) = (shape.HalfNewel, shape.Site.InnerFace);
        var open = shape.Job.InnerSide == SideKind.Open;
        var edges = new List<BoundaryEdge>();
        var c = shape.Centre;
        var bottom = open && (!shape.HasTurn || shape.Before > 0);
        if (bottom)
        {
            edges.Add(new(new(h, -h), new(h, h), BoundaryKind.NewelFace, Ids.BottomNewel, "E"));
            edges.Add(new(new(h, h), new(f, h), BoundaryKind.NewelJog, Ids.BottomNewel, "N"));
        }
        var from = bottom ? h : 0;
        if (!shape.HasTurn)
        {
            var end = shape.LastFace - (open ? h : 0);
            edges.Add(new(new(f, from), new(f, end), BoundaryKind.StringFace, Ids.Inner(shape, 1), ""));
            if (open)
            {
                edges.Add(new(new(f, end), new(h, end), BoundaryKind.NewelJog, Ids.TopNewel, "S"));
                edges.Add(new(new(h, end), new(h, end + 2 * h), BoundaryKind.NewelFace, Ids.TopNewel, "E"));
            }
            return new(edges);
        }
        if (shape.Before > 0)
        {
            edges.Add(new(new(f, from), new(f, c.Y - h), BoundaryKind.StringFace, Ids.Inner(shape, 1), ""));
            edges.Add(new(new(f, c.Y - h), new(h, c.Y - h), BoundaryKind.NewelJog, Ids.TurnNewel, "S"));
        }
        edges.Add(new(new(h, c.Y - h), new(h, c.Y + h), BoundaryKind.NewelFace, Ids.TurnNewel, "E"));
        edges.Add(new(new(h, c.Y + h), new(-h, c.Y + h), BoundaryKind.NewelFace, Ids.TurnNewel, "N"));
        if (shape.After == 0) return new(edges);
        edges.Add(new(new(-h, c.Y + h), new(-h, c.Y + f), BoundaryKind.NewelJog, Ids.TurnNewel, "W"));
        var last = shape.LastFace + (open ? h : 0);
        edges.Add(new(new(-h, c.Y + f), new(last, c.Y + f), BoundaryKind.StringFace, Ids.Inner(shape, 2), ""));
        if (open)
        {
            edges.Add(new(new(last, c.Y + f), new(last, c.Y + h), BoundaryKind.NewelJog, Ids.TopNewel, "E"));
            edges.Add(new(new(last, c.Y + h), new(last - 2 * h, c.Y + h), BoundaryKind.NewelFace, Ids.TopNewel, "N"));
        }
        return new(edges);
    }

    public static Boundary Outer(PlanShape shape)
    {
        var o = shape.Site.OuterFace;
        if (shape.HasTurn)
        {
            var k = shape.Corner;
            // Beside a landing without a flight before (or after) it there is no string, only the wall.
            var landing = shape.Job.Layout.Turn!.Kind == TurnKind.Landing;
            return new([Side(new(o, 0), k, 1, landing && shape.Before == 0), Side(k, new(shape.LastFace, k.Y), 2, landing && shape.After == 0)]);

            BoundaryEdge Side(Point2 from, Point2 to, int flight, bool bare) =>
                new(from, to, bare ? BoundaryKind.Wall : BoundaryKind.StringFace, bare ? "" : Ids.Outer(shape, flight), "");
        }
        if (shape.Job.OuterSide == SideKind.Wall)
            return new([new(new(o, 0), new(o, shape.LastFace), BoundaryKind.StringFace, Ids.Outer(shape, 1), "")]);
        // The open outer side of a straight flight: the inner side's newels and string, across the clear width.
        var h = shape.HalfNewel;
        var face = o + shape.OuterThickness / 2 - h;
        var top = shape.LastFace;
        return new([
            new(new(face, -h), new(face, h), BoundaryKind.NewelFace, Ids.OuterBottomNewel, "W"),
            new(new(face, h), new(o, h), BoundaryKind.NewelJog, Ids.OuterBottomNewel, "N"),
            new(new(o, h), new(o, top - h), BoundaryKind.StringFace, Ids.Outer(shape, 1), ""),
            new(new(o, top - h), new(face, top - h), BoundaryKind.NewelJog, Ids.OuterTopNewel, "S"),
            new(new(face, top - h), new(face, top + h), BoundaryKind.NewelFace, Ids.OuterTopNewel, "W")]);
    }
}
