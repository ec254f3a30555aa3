namespace Rodwright.Stairs.Jobs;

/// <summary>The space cut for a wedge, along a tread's underside or down a riser's back.</summary>
/// <param name="Length">From the thin end to the riser's face (tread wedge), or from the thin end down to the underside of the tread below (riser wedge), mm.</param>
/// <param name="Thin">Thickness at the thin end, mm.</param>
/// <param name="Taper">Thickens by 1 in this many.</param>
/// <param name="RunOn">How far the space is run on past the thick end so that the wedge can be driven, mm.</param>
public sealed record WedgeShape(double Length, double Thin, double Taper, double RunOn);
