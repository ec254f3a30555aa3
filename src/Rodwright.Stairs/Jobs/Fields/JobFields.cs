using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Every field of a job file.</summary>
public static class JobFields
{
    private static readonly ImmutableArray<string> Hands = ["left", "right"];
    private static readonly ImmutableArray<string> EndNewels = ["newel", "half-newel"];
    private static readonly ImmutableArray<string> SideKinds = ItemFields.SideWords;

    /// <summary>A job before its fields are read: its required values are placeholders that never leave the reader.</summary>
    internal static Job Blank { get; } = new()
    {
        Title = "", Regulation = "", Going = 0, Width = 0, Survey = new() { FloorToFloor = [] },
        Layout = new(Hand.Left, []), Sides = Sides.For(Hand.Left),
    };

    /// <summary>The same in a unit: what is left out of a job in inches is stock of inches.</summary>
    internal static Job BlankIn(Units units) => units.IsInches ? InchBlank.Value : Blank;

    private static Lazy<Job> InchBlank { get; } = new(() => Blank with
    {
        Units = Units.Inches, Practice = InchPractice.Usual, BottomStep = InchUsual.BottomStep,
        Survey = Blank.Survey with { Tolerance = InchUsual.Tolerance, Accuracy = InchUsual.Accuracy },
    });

    /// <summary>The fields, in the order they are written.</summary>
    internal static ImmutableArray<Field<Job>> All { get; } =
    [
        new VersionField(),
        new TextField<Job>("title", "title of the job", 80, "on every title block", j => j.Title, (j, v) => j with { Title = v }, required: true),
        new UnitsField(),
        new RegulationField(),
        new GroupField<Job, Survey>("survey", "survey", "what was measured in the house", j => j.Survey, (j, v) => j with { Survey = v },
            SurveyFields.All, required: true),
        new GroupField<Job, Layout>("layout", "layout", "hand, flights and turns", j => j.Layout, (j, v) => j with { Layout = v },
        [
            new ChoiceField<Layout>("hand", "hand", Hands, JobCodes.Hand, "hand",
                "which way the stair turns going up; for a straight flight, its open side", l => Hands[(int)l.Hand], (l, v) => l with { Hand = (Hand)Hands.IndexOf(v) }, required: true),
            new SequenceField(),
        ], required: true),
        new GroupField<Job, Sides>("sides", "sides", "open or walled, as somebody climbing sees them; left out: the inside of the turn (a straight flight's hand) is open", j => j.Sides, (j, v) => j with { Sides = v },
        [
            new ChoiceField<Sides>("left", "left side", SideKinds, JobCodes.Side, "side", "open: a newel string; wall: a wall string", s => SideKinds[(int)s.Left], (s, v) => s with { Left = (SideKind)SideKinds.IndexOf(v) }),
            new ChoiceField<Sides>("right", "right side", SideKinds, JobCodes.Side, "side", "open: a newel string; wall: a wall string", s => SideKinds[(int)s.Right], (s, v) => s with { Right = (SideKind)SideKinds.IndexOf(v) }),
        ]),
        new NumberField<Job>("going", "going of the straight steps", new(20, 600, "mm"), "from riser face to riser face", j => j.Going, (j, v) => j with { Going = v }, required: true),
        new NumberField<Job>("width", "width over the strings", new(60, 3000, "mm"), "outside to outside of the strings", j => j.Width, (j, v) => j with { Width = v }, required: true),
        new GroupField<Job, Ends>("ends", "ends of open sides", "a newel, or half a newel against the end of a wall in line with the string", j => j.Ends, (j, v) => j with { Ends = v },
        [
            new ChoiceField<Ends>("foot", "newel at the foot", EndNewels, JobCodes.EndNewel, "newel", "half-newel: split down its middle, its back against a wall at the first riser's face", e => EndNewels[(int)e.Foot], (e, v) => e with { Foot = (EndNewel)EndNewels.IndexOf(v) }),
            new ChoiceField<Ends>("head", "newel at the head", EndNewels, JobCodes.EndNewel, "newel", "half-newel: split down its middle, its back against a wall at the last riser's face", e => EndNewels[(int)e.Head], (e, v) => e with { Head = (EndNewel)EndNewels.IndexOf(v) }),
        ]),
        new GroupField<Job, BottomStep>("bottomStep", "bottom step", "how it ends at an open side", j => j.BottomStep, (j, v) => j with { BottomStep = v }, BottomStepFields.All),
        new MaybeGroupField<Job, Balustrade>("balustrade", "balustrade", "left out, none is made; {} makes one of the usual sizes", j => j.Balustrade, (j, v) => j with { Balustrade = v },
            j => j.Units.IsInches ? InchBalustrade.Usual : new(), BalustradeFields.All),
        new MaybeGroupField<Job, LandingEdge>("landingEdge", "open edges of landings", "left out, none are made; {} makes nosing and apron lining under the base rails of landings and round the surveyed well", j => j.LandingEdge, (j, v) => j with { LandingEdge = v },
            j => j.Units.IsInches ? InchBalustrade.LandingEdge : new(), LandingEdgeFields.All),
        new MaybeGroupField<Job, SmallParts>("smallParts", "wedges, glue blocks and pegs", "left out, they are not made as pieces; {} makes the usual ones", j => j.SmallParts, (j, v) => j with { SmallParts = v },
            j => j.Units.IsInches ? InchBalustrade.SmallParts : new(), SmallPartsFields.All),
        new MaybeGroupField<Job, Carriage>("carriage", "carriages", "left out, none are made; {} makes them where the width asks for them", j => j.Carriage, (j, v) => j with { Carriage = v },
            j => Carriage.Usual(j.Units), CarriageFields.All),
        new NumberField<Job>("modelScale", "scale of a teaching model", new(0.1, 1, ""), "1 for a stair; limits of the regulation are multiplied by it, timber is not", j => j.ModelScale, (j, v) => j with { ModelScale = v }),
        new GroupField<Job, Practice>("practice", "the shop's sizes and habits", "every one has a default of common practice", j => j.Practice, (j, v) => j with { Practice = v }, PracticeFields.All),
        new MaybeGroupField<Job, Wishes>("wishes", "wishes", "what a stair is chosen by; a stair that is set out takes no notice of them", j => j.Wishes, (j, v) => j with { Wishes = v }, j => Wishes.UsualIn(j.Units), WishesFields.All),
    ];

    /// <summary>What there is to know about every field, in the order of the file.</summary>
    public static ImmutableArray<FieldDescription> Descriptions { get; } = [.. All.SelectMany(f => f.Describe(f.Name, Blank))];

    /// <summary>The same with what a job of a unit takes where its file says nothing; all lengths in millimetres.</summary>
    public static ImmutableArray<FieldDescription> DescriptionsIn(Units units) => units.IsInches ? InInches.Value : Descriptions;

    private static Lazy<ImmutableArray<FieldDescription>> InInches { get; } = new(() => [.. All.SelectMany(f => f.Describe(f.Name, InchBlank.Value))]);
}
