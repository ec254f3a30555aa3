namespace Rodwright.Geometry.Solids;

/// <summary>A surface over the base plane: level, or sloping in the one direction across which other outlines run (t). Held between its two ends.</summary>
internal readonly record struct Level(double FromT, double FromW, double ToT, double ToW)
{
    /// <summary>A level surface.</summary>
    public static Level At(double w) => new(0, w, 0, w);

    /// <summary>Whether it slopes.</summary>
    public bool Slopes => FromW != ToW;

    /// <summary>Rise per unit of t.</summary>
    public double Slope => Slopes ? (ToW - FromW) / (ToT - FromT) : 0;

    /// <summary>Height at t.</summary>
    public double HeightAt(double t)
    {
        if (!Slopes) return FromW;
        if (t <= FromT) return FromW;
        if (t >= ToT) return ToW;
        return FromW + (ToW - FromW) * (t - FromT) / (ToT - FromT);
    }
}
