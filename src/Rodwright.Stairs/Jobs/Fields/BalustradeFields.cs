using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="Balustrade"/>.</summary>
internal static class BalustradeFields
{
    private const string Common = "common practice";
    private static readonly ImmutableArray<string> Shapes = ["none", "flat", "pyramid"];
    private static readonly ImmutableArray<string> Ways = ["away", "on"];
    private static readonly ImmutableArray<string> Wanted = ["asked", "always", "never"];

    private static ImmutableArray<Field<Section>> RailSection { get; } = SectionOf("handrail");

    private static ImmutableArray<Field<Section>> BaseSection { get; } = SectionOf("base rail");

    private static ImmutableArray<Field<Section>> WallSection { get; } = SectionOf("wall rail");

    private static ImmutableArray<Field<RailTenon>> Tenon { get; } =
    [
        Size<RailTenon>("thickness", "thickness of the rail's tenon", 6, 60, "in the middle of the rail", t => t.Thickness, (t, v) => t with { Thickness = v }),
        Size<RailTenon>("length", "length of the rail's tenon", 10, 100, "a level tenon on a raking rail loses depth with its length", t => t.Length, (t, v) => t with { Length = v }),
        Size<RailTenon>("shoulder", "shoulder above the rail's tenon", 0, 40, "plumb, at the rail's top edge", t => t.Shoulder, (t, v) => t with { Shoulder = v }),
        Size<RailTenon>("peg", "diameter of the rail's peg", 3, 25, Common, t => t.Peg, (t, v) => t with { Peg = v }),
        Size<RailTenon>("pegBack", "rail's peg from the shoulder", 5, 60, "its centre; never more than half the tenon", t => t.PegBack, (t, v) => t with { PegBack = v }),
    ];

    private static ImmutableArray<Field<NewelCap>> Cap { get; } =
    [
        new ChoiceField<NewelCap>("shape", "shape of the newels' caps", Shapes, JobCodes.CapShape, "shape", "none: the head is finished on the newel itself", c => Shapes[(int)c.Shape], (c, v) => c with { Shape = (CapShape)Shapes.IndexOf(v) }),
        Size<NewelCap>("edge", "edge of a cap", 5, 120, "height of its square edge", c => c.Edge, (c, v) => c with { Edge = v }),
        Size<NewelCap>("rise", "rise of a cap", 1, 200, "of the pyramid above the edge", c => c.Rise, (c, v) => c with { Rise = v }),
        Size<NewelCap>("overhang", "overhang of a cap", 0, 60, "over the newel, on each side", c => c.Overhang, (c, v) => c with { Overhang = v }),
        Size<NewelCap>("recess", "recess in a cap", 0, 60, "in its underside, for the newel's head", c => c.Recess, (c, v) => c with { Recess = v }),
    ];

    private static ImmutableArray<Field<UpperLanding>> Upper { get; } =
    [
        new NumberField<UpperLanding>("length", "length of the upper landing's balustrade", new(200, 6000, "mm"), "from the top newel's centre to the wall; left out: there is none", u => u.Length, (u, v) => u with { Length = v }),
        new ChoiceField<UpperLanding>("way", "way of the upper landing's balustrade", Ways, JobCodes.LandingWay, "way", "away: square to the flight, away from its steps; on: straight on", u => Ways[(int)u.Way], (u, v) => u with { Way = (LandingWay)Ways.IndexOf(v) }),
    ];

    private static ImmutableArray<Field<WallRail>> Wall { get; } =
    [
        new ChoiceField<WallRail>("wanted", "wall rails wanted", Wanted, JobCodes.WallRail, "word", "asked: where the regulation asks for a handrail that no open side has", w => Wanted[(int)w.Wanted], (w, v) => w with { Wanted = (WallRailWanted)Wanted.IndexOf(v) }),
        new GroupField<WallRail, Section>("section", "wall rail", "its section, finished", w => w.Section, (w, v) => w with { Section = v }, WallSection),
        Size<WallRail>("clear", "clear behind the wall rail", 20, 120, "between the rail and the wall; room for a hand", w => w.Clear, (w, v) => w with { Clear = v }),
        Size<WallRail>("brackets", "distance of the brackets", 200, 2000, "along the rail, at most", w => w.Brackets, (w, v) => w with { Brackets = v }),
        Size<WallRail>("fromEnd", "first bracket from the end", 0, 600, "along the rail", w => w.FromEnd, (w, v) => w with { FromEnd = v }),
        Size<WallRail>("bracket", "thickness of a bracket", 10, 120, "along the wall", w => w.Bracket, (w, v) => w with { Bracket = v }),
    ];

    public static ImmutableArray<Field<Balustrade>> All { get; } =
    [
        new GroupField<Balustrade, Section>("rail", "handrail", "its section, finished", b => b.Rail, (b, v) => b with { Rail = v }, RailSection),
        new GroupField<Balustrade, Section>("baseRail", "base rail", "its section, finished; on the newel strings and along landings", b => b.BaseRail, (b, v) => b with { BaseRail = v }, BaseSection),
        Size<Balustrade>("groove", "depth of the balusters' grooves", 0, 40, "under the handrail and in the base rail, as wide as a baluster", b => b.Groove, (b, v) => b with { Groove = v }),
        Size<Balustrade>("baluster", "side of a baluster", 10, 120, "square; trade stock", b => b.Baluster, (b, v) => b with { Baluster = v }),
        new NumberField<Balustrade>("gap", "greatest gap between balusters", new(20, 300, "mm"), "clear; left out: just less than the regulation's sphere, or 99", b => b.Gap, (b, v) => b with { Gap = v }),
        Size<Balustrade>("follow", "how far a straight rail may stand high", 0, 300, "above the wanted height, over any nosing, before it is reported", b => b.Follow, (b, v) => b with { Follow = v }),
        new NumberField<Balustrade>("landingHeight", "height of a landing's handrail", new(100, 1500, "mm"), "above its floor; left out: practice.railHeight", b => b.LandingHeight, (b, v) => b with { LandingHeight = v }),
        new GroupField<Balustrade, RailTenon>("tenon", "rail's tenon", "stub, draw-bored, in the newel", b => b.Tenon, (b, v) => b with { Tenon = v }, Tenon),
        new GroupField<Balustrade, NewelCap>("cap", "newel cap", "on every newel", b => b.Cap, (b, v) => b with { Cap = v }, Cap),
        new GroupField<Balustrade, UpperLanding>("upperLanding", "balustrade of the upper landing", "along the well's edge, to half a newel against a wall", b => b.UpperLanding, (b, v) => b with { UpperLanding = v }, Upper),
        new GroupField<Balustrade, WallRail>("wallRail", "wall rail", "on brackets", b => b.WallRail, (b, v) => b with { WallRail = v }, Wall),
    ];

    private static ImmutableArray<Field<Section>> SectionOf(string piece) =>
    [
        Size<Section>("width", $"width of the {piece}", 15, 200, "finished", s => s.Width, (s, v) => s with { Width = v }),
        Size<Section>("height", $"height of the {piece}", 12, 200, "finished, square to its length", s => s.Height, (s, v) => s with { Height = v }),
    ];

    private static Field<T> Size<T>(string name, string label, double least, double most, string source, Func<T, double> get, Func<T, double, T> set) where T : class =>
        new NumberField<T>(name, label, new(least, most, "mm"), source, owner => get(owner), set);
}
