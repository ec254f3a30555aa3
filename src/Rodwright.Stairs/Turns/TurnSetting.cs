namespace Rodwright.Stairs.Turns;

/// <summary>What a turn's riser lines are laid from, beside its site.</summary>
/// <param name="FirstRiser">e_in: how far the first riser's face stands outside the newel's centre, mm.</param>
/// <param name="LastRiser">e_out, likewise for the last riser.</param>
/// <param name="Steps">Steps of the turn itself.</param>
public sealed record TurnSetting(double FirstRiser, double LastRiser, int Steps)
{
    /// <summary>Straight steps before the turn that share its taper.</summary>
    public int Before { get; init; }

    /// <summary>Straight steps after it.</summary>
    public int After { get; init; }

    /// <summary>Going of the straight steps, mm; used where steps share the taper.</summary>
    public double Going { get; init; }

    /// <summary>The narrow end wished for at the turn, mm; used by methods that fix it.</summary>
    public double Narrow { get; init; }

    /// <summary>Least from a riser's face to the end of the newel, inside it, mm.</summary>
    public double Cover { get; init; }

    /// <summary>Thickness of the risers, mm: past the newel their backs keep the cover too.</summary>
    public double Riser { get; init; }

    /// <summary>How far nosings stand in front of their risers, mm.</summary>
    public double Nosing { get; init; }

    /// <summary>Steps that taper, those shared with the flights counted.</summary>
    public int Tapered => Before + Steps + After;

    /// <summary>How far the first line stands outside the newel's centre.</summary>
    public double First => FirstRiser + Before * Going;

    /// <summary>How far the last line stands outside the newel's centre.</summary>
    public double Last => LastRiser + After * Going;
}
