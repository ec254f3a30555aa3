using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations;

/// <summary>What a clause allows. Full size: a length is multiplied by the model scale where it is judged, unless it is the project's own tolerance.</summary>
public sealed record Limit
{
    private Limit() { }

    /// <summary>Least allowed, full size; null where free.</summary>
    public double? Least { get; private init; }

    /// <summary>Most allowed, full size; null where free.</summary>
    public double? Most { get; private init; }

    /// <summary>What is measured against instead of a number.</summary>
    public LimitReference Reference { get; private init; }

    /// <summary>How many straight goings are the most; 0 for another reference.</summary>
    public double Times { get; private init; }

    /// <summary>The boxes of rise and going a going must lie in one of, with the stair's rise; empty for every other limit.</summary>
    public ImmutableArray<RiseAndGoing> Boxes { get; private init; } = [];

    /// <summary>The document's own figure where it is not metric, for example "7¾ in"; empty otherwise.</summary>
    public string Figure { get; private init; } = "";

    /// <summary>False for a tolerance of the project's own, which a model does not make finer.</summary>
    public bool Scales { get; private init; } = true;

    /// <summary>No limit: measured for information.</summary>
    public static Limit None { get; } = new();

    /// <summary>At least the straight steps' going.</summary>
    public static Limit AtLeastStraightGoing { get; } = new() { Reference = LimitReference.StraightGoing };

    /// <summary>At least the clear width of the flight.</summary>
    public static Limit AtLeastClearWidth { get; } = new() { Reference = LimitReference.ClearWidth };

    /// <summary>At most so many straight goings.</summary>
    public static Limit AtMostStraightGoings(double times) => new() { Reference = LimitReference.StraightGoings, Times = times };

    /// <summary>A going that lies, with the stair's rise, in any one of several boxes.</summary>
    /// <exception cref="ArgumentException">No box.</exception>
    public static Limit WithRise(params ImmutableArray<RiseAndGoing> boxes) =>
        boxes.IsEmpty ? throw new ArgumentException("a box at least", nameof(boxes)) : new() { Boxes = boxes };

    /// <summary>At least a value.</summary>
    public static Limit AtLeast(double least, string figure = "") => new() { Least = least, Figure = figure };

    /// <summary>At most a value.</summary>
    public static Limit AtMost(double most, string figure = "") => new() { Most = most, Figure = figure };

    /// <summary>From one value to another, both allowed.</summary>
    public static Limit Between(double least, double most, string figure = "") => new() { Least = least, Most = most, Figure = figure };

    /// <summary>Equal within a tolerance of the project's own (1 mm, setting-out.md 2.2), where a document says "equal" without a number.</summary>
    public static Limit Equal { get; } = new() { Most = 1, Scales = false };

    /// <summary>Whether it limits nothing.</summary>
    public bool IsNone => Least is null && Most is null && Reference == LimitReference.None && Boxes.IsEmpty;

    /// <summary>The limits on one stair.</summary>
    public LimitRange On(StairPlan plan, RuleUnit unit)
    {
        if (!Boxes.IsEmpty) return InBoxes(plan);
        var scale = Scales && unit == RuleUnit.Millimetres ? plan.Job.ModelScale : 1;
        var least = Reference switch
        {
            LimitReference.StraightGoing => plan.Going,
            LimitReference.ClearWidth => plan.ClearWidth,
            _ => Least * scale,
        };
        return new(least, Reference == LimitReference.StraightGoings ? Times * plan.Going : Most * scale);
    }

    /// <summary>
    /// The goings of the boxes that hold the stair's rise. Where none does, those of the box nearest to it: the rise is then broken by a clause of its own.
    /// Boxes that leave a gap between their goings are told apart by the straight going: the nearest stretch counts.
    /// </summary>
    private LimitRange InBoxes(StairPlan plan)
    {
        var (scale, rise, going) = (plan.Job.ModelScale, plan.Rise, plan.Going);
        var off = Boxes.Min(b => b.RiseOff(rise, scale));
        LimitRange? found = null;
        foreach (var box in Boxes.Where(b => b.RiseOff(rise, scale) <= off + Tolerance.Same).OrderBy(b => b.GoingLeast))
        {
            var range = new LimitRange(box.GoingLeast * scale, box.GoingMost * scale);
            if (found is { } so && range.Least <= so.Most + Tolerance.Same) found = new(so.Least, Math.Max(so.Most!.Value, range.Most!.Value));
            else if (found is not { } before || range.Spare(going) > before.Spare(going)) found = range;
        }
        return found!.Value;
    }

    /// <summary>The limit in words, for a rule and the stair it is judged on. The document's own figure is added where the stair is not measured in its unit.</summary>
    public string Words(Rule rule, LimitRange range, Units units)
    {
        var against = Reference switch
        {
            LimitReference.StraightGoing => " (the straight going)",
            LimitReference.ClearWidth => " (the clear width)",
            LimitReference.StraightGoings => $" ({Number.Print(Times, 2)} straight goings)",
            _ => Boxes.IsEmpty ? Figure.Length > 0 && !units.IsInches ? $" ({Figure})" : "" : " (with this rise)",
        };
        return (range.Least, range.Most) switch
        {
            ({ } least, { } most) => $"{(rule.Unit == RuleUnit.Millimetres ? units.Least(least) : Number.Print(least, 2))} to {rule.Print(most, units)}{against}",
            ({ } least, null) => $"at least {rule.Print(least, units)}{against}",
            (null, { } most) => $"at most {rule.Print(most, units)}{against}",
            _ => "no limit",
        };
    }

    /// <summary>The limit as the table states it, whatever the stair.</summary>
    /// <param name="rule">What is measured.</param>
    /// <param name="document">The unit its document is written in; lengths of a document in inches have millimetres beside them.</param>
    public string Statement(Rule rule, Units document) => Reference switch
    {
        LimitReference.StraightGoing => "at least the straight going",
        LimitReference.ClearWidth => "at least the clear width",
        LimitReference.StraightGoings => $"at most {Number.Print(Times, 2)} straight goings",
        _ when !Boxes.IsEmpty => string.Join(", or ", Boxes.Select(b =>
            $"{Number.Print(b.GoingLeast, 2)} to {rule.Print(b.GoingMost, Units.Millimetres)} with a rise of {Number.Print(b.RiseLeast, 2)} to {rule.Print(b.RiseMost, Units.Millimetres)}")),
        _ => Figures(rule, document),
    };

    /// <summary>The numbers; of a document in inches in its own figures with millimetres beside, or the other way about where a shop's clause is no fraction a rule shows.</summary>
    private string Figures(Rule rule, Units document)
    {
        var bare = this with { Figure = "" };
        if (rule.Unit != RuleUnit.Millimetres || IsNone || !document.IsInches) return bare.Words(rule, new(Least, Most), Units.Millimetres);
        var inFractions = DocumentLength.IsFraction(Least ?? 0) && DocumentLength.IsFraction(Most ?? 0);
        var (first, beside) = inFractions ? (Units.Inches, Units.Millimetres) : (Units.Millimetres, Units.Inches);
        return $"{bare.Words(rule, new(Least, Most), first)} ({((Least, Most) is ({ } least, { } most) ? beside.Range(least, most) : beside.With((Least ?? Most)!.Value))})";
    }
}

/// <summary>What a limit refers to on the stair itself.</summary>
public enum LimitReference
{
    /// <summary>Nothing: the limit is a number.</summary>
    None,

    /// <summary>The going of the straight steps.</summary>
    StraightGoing,

    /// <summary>The clear width between the strings.</summary>
    ClearWidth,

    /// <summary>A number of straight goings, as the most.</summary>
    StraightGoings,
}
