using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Where the newels and strings of a plan stand, left-hand frame.</summary>
internal static class Sites
{
    public static ImmutableArray<NewelSite> Newels(PlanShape shape)
    {
        var sites = new List<NewelSite>();
        var open = shape.Job.InnerSide == SideKind.Open;
        var c = shape.Centre;
        if (open && (!shape.HasTurn || shape.Before > 0)) Add(Ids.BottomNewel, "bottom newel", NewelRole.Bottom, new(0, 0), true);
        if (shape.HasTurn) Add(Ids.TurnNewel, "turn newel", NewelRole.Turn, c, true);
        if (open && !shape.HasTurn) Add(Ids.TopNewel, "top newel", NewelRole.Top, new(0, shape.LastFace), true);
        if (open && shape.HasTurn && shape.After > 0) Add(Ids.TopNewel, "top newel", NewelRole.Top, new(shape.LastFace, c.Y), true);
        if (shape.Job.OuterSide == SideKind.Open && !shape.HasTurn)
        {
            var x = shape.Site.OuterFace + shape.OuterThickness / 2;
            Add(Ids.OuterBottomNewel, "bottom newel, other side", NewelRole.Bottom, new(x, 0), false);
            Add(Ids.OuterTopNewel, "top newel, other side", NewelRole.Top, new(x, shape.LastFace), false);
        }
        return [.. sites];

        void Add(string id, string name, NewelRole role, Point2 centre, bool inner) =>
            sites.Add(new(id, name, $"N{sites.Count + 1}", role, centre, inner));
    }

    public static ImmutableArray<StringSite> Strings(PlanShape shape)
    {
        var sites = new List<StringSite>();
        Outer(shape, sites);
        Inner(shape, sites);
        return [.. sites];
    }

    private static void Outer(PlanShape shape, List<StringSite> sites)
    {
        var o = shape.Site.OuterFace;
        var job = shape.Job;
        if (!shape.HasTurn)
        {
            var open = job.OuterSide == SideKind.Open;
            Add(shape, sites, Ids.Outer(shape, 1), inner: false, new(new(o, 0), new(0, 1)),
                open ? new(StringEndKind.Newel, 0, 0, Ids.OuterBottomNewel) : new(StringEndKind.Foot, 0, 0),
                open ? new(StringEndKind.Newel, shape.LastFace, 0, Ids.OuterTopNewel) : shape.HeadAt(shape.LastFace, job.Layout.Risers));
            return;
        }
        var corner = shape.Corner;
        if (job.Layout.Turn!.Kind == TurnKind.Landing)
        {
            // The landing is floor: the lower string ends at it with a head, the upper one stands on it.
            if (shape.Before > 0)
                Add(shape, sites, Ids.Outer(shape, 1), inner: false, new(new(o, 0), new(0, 1)),
                    new(StringEndKind.Foot, 0, 0), shape.HeadAt(shape.Before * job.Going, shape.TurnRiser));
            if (shape.After > 0)
                Add(shape, sites, Ids.Outer(shape, 2), inner: false, new(new(-shape.LastRiser, corner.Y), new(-1, 0)),
                    new(StringEndKind.Foot, 0, shape.TurnRiser * job.Rise), shape.HeadAt(shape.After * job.Going, job.Layout.Risers));
            return;
        }
        var s = corner.Y; // riser 1's face is at y = 0, so the corner's station is its y
        Add(shape, sites, Ids.Outer(shape, 1), inner: false, new(new(o, 0), new(0, 1)),
            new(StringEndKind.Foot, 0, 0), new(StringEndKind.CornerThrough, s, 0));
        Add(shape, sites, Ids.Outer(shape, 2), inner: false, new(corner + new Vector2(s, 0), new(-1, 0)),
            new(StringEndKind.CornerLetIn, s, 0), shape.HeadAt(s + corner.X - shape.LastFace, job.Layout.Risers));
    }

    private static void Inner(PlanShape shape, List<StringSite> sites)
    {
        var f = shape.Site.InnerFace;
        var job = shape.Job;
        var open = job.InnerSide == SideKind.Open;
        if (!shape.HasTurn)
        {
            Add(shape, sites, Ids.Inner(shape, 1), inner: true, new(new(f, 0), new(0, 1)),
                open ? new(StringEndKind.Newel, 0, 0, Ids.BottomNewel) : new(StringEndKind.Foot, 0, 0),
                open ? new(StringEndKind.Newel, shape.LastFace, 0, Ids.TopNewel) : shape.HeadAt(shape.LastFace, job.Layout.Risers));
            return;
        }
        var c = shape.Centre;
        if (shape.Before > 0)
        {
            Add(shape, sites, Ids.Inner(shape, 1), inner: true, new(new(f, 0), new(0, 1)),
                open ? new(StringEndKind.Newel, 0, 0, Ids.BottomNewel) : new(StringEndKind.Foot, 0, 0),
                new(StringEndKind.Newel, c.Y, 0, Ids.TurnNewel));
        }
        if (shape.After > 0)
        {
            // s = 0 at the turn newel's centre, x = 0.
            Add(shape, sites, Ids.Inner(shape, 2), inner: true, new(new(0, c.Y + f), new(-1, 0)),
                new(StringEndKind.Newel, 0, 0, Ids.TurnNewel),
                open ? new(StringEndKind.Newel, -shape.LastFace, 0, Ids.TopNewel) : shape.HeadAt(-shape.LastFace, job.Layout.Risers));
        }
    }

    private static void Add(PlanShape shape, List<StringSite> sites, string id, bool inner, Line2 face, StringEnd lower, StringEnd upper)
    {
        var isWall = (inner ? shape.Job.InnerSide : shape.Job.OuterSide) == SideKind.Wall;
        var board = isWall ? shape.Job.Practice.WallString : shape.Job.Practice.NewelString;
        var mark = (isWall ? "W" : "F") + id[(id.LastIndexOf('-') + 1)..];
        var name = (isWall ? "wall string" : "newel string") + (shape.HasTurn ? (face.Along.Y > 0 ? ", lower flight" : ", upper flight") : "")
            + (SameKindBothSides(shape) ? SideWords(shape, inner) : "");
        sites.Add(new(id, name, mark, isWall, inner, face, board.Thickness, board.Width, lower, upper));
    }

    /// <summary>Which side, in words: of a turn the inner or outer, of a straight flight the left or right as one climbs.</summary>
    private static string SideWords(PlanShape shape, bool inner) => shape.HasTurn
        ? inner ? ", inner side" : ", outer side"
        : inner == shape.Job.IsRightHanded ? ", right side" : ", left side";

    private static bool SameKindBothSides(PlanShape shape) => shape.Job.InnerSide == shape.Job.OuterSide;
}
