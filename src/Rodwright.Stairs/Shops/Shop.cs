using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Shops;

/// <summary>What a shop has on its racks, what its saws and planes take, and what it reckons with: as its file says it. Lengths in mm, prices in the shop's own currency.</summary>
public sealed record Shop
{
    /// <summary>Name of the shop, or of the list.</summary>
    public required string Name { get; init; }

    /// <summary>Sign of the currency, printed before every price.</summary>
    public string Currency { get; init; } = "£";

    /// <summary>What sawing takes.</summary>
    public ShopSaw Saw { get; init; } = new();

    /// <summary>What is left on for planing, jointing and cutting to length.</summary>
    public ShopAllowances Allowances { get; init; } = new();

    /// <summary>Cutters of the machine and of the hand router.</summary>
    public ShopRouter Router { get; init; } = new();

    /// <summary>Boards that are stocked or can be had.</summary>
    public ImmutableArray<ShopBoard> Boards { get; init; } = [];

    /// <summary>Sheet goods.</summary>
    public ImmutableArray<ShopSheet> Sheets { get; init; } = [];

    /// <summary>Boards left over from earlier jobs, one by one.</summary>
    public ImmutableArray<ShopOffcut> Offcuts { get; init; } = [];

    /// <summary>Fixings, glue and other things that are counted.</summary>
    public ImmutableArray<ShopFixing> Fixings { get; init; } = [];

    /// <summary>Work by operation.</summary>
    public ImmutableArray<ShopOperation> Work { get; init; } = [];

    /// <summary>Rate, waste and margin.</summary>
    public ShopRates Rates { get; init; } = new();

    /// <summary>Equal when all of it is: arrays alone would be compared by identity.</summary>
    public bool Equals(Shop? other) => other is not null && Name == other.Name && Currency == other.Currency && Saw == other.Saw && Router == other.Router && Allowances == other.Allowances && Rates == other.Rates
        && Boards.SequenceEqual(other.Boards) && Sheets.SequenceEqual(other.Sheets) && Offcuts.SequenceEqual(other.Offcuts) && Fixings.SequenceEqual(other.Fixings) && Work.SequenceEqual(other.Work);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Currency, Saw, Allowances, Boards.Length, Offcuts.Length);
}

/// <summary>What sawing takes, mm.</summary>
public sealed record ShopSaw
{
    /// <summary>Wood lost in one cut; default 4.</summary>
    public double Kerf { get; init; } = 4;

    /// <summary>Cut off each end of a board before it is used; default 15.</summary>
    public double EndTrim { get; init; } = 15;

    /// <summary>Taken off each edge of a board that is ripped; default 3.</summary>
    public double EdgeTrim { get; init; } = 3;

    /// <summary>Shortest offcut that is kept; default 600.</summary>
    public double LeastOffcut { get; init; } = 600;
}

/// <summary>What recesses are cut with, mm across.</summary>
public sealed record ShopRouter
{
    /// <summary>The machine's cutter; default 10.</summary>
    public double Cutter { get; init; } = 10;

    /// <summary>The hand router's straight cutter; default 12.</summary>
    public double HandCutter { get; init; } = 12;

    /// <summary>The hand router's guide bush, outside; default 30.</summary>
    public double Bush { get; init; } = 30;

    /// <summary>How far a jig's opening stands outside what is cut through it: half of bush less cutter.</summary>
    public double Offset => (Bush - HandCutter) / 2;

    /// <summary>What is taken where no shop file says otherwise: whole millimetres, or the nearest usual fractions of an inch, 3/8, 1/2 and 1 1/4.</summary>
    public static ShopRouter Usual(Units units) => units.IsInches ? new() { Cutter = Units.Inch * 3 / 8, HandCutter = Units.Inch / 2, Bush = Units.Inch * 5 / 4 } : new();
}

/// <summary>What is left on, mm.</summary>
public sealed record ShopAllowances
{
    /// <summary>Sawn size over finished size of what is up to <see cref="PlaningLimit"/>; default 3.</summary>
    public double Planing { get; init; } = 3;

    /// <summary>The same of what is more; default 5.</summary>
    public double PlaningOver { get; init; } = 5;

    /// <summary>Thickness or width up to which <see cref="Planing"/> holds; default 50.</summary>
    public double PlaningLimit { get; init; } = 50;

    /// <summary>On the length of a piece, both ends together; default 12.5.</summary>
    public double Length { get; init; } = 12.5;

    /// <summary>On each end of a string; default 40.</summary>
    public double StringEnd { get; init; } = 40;

    /// <summary>On each end of a newel; default 40.</summary>
    public double NewelEnd { get; init; } = 40;

    /// <summary>On each end of a strip that is glued up; default 10.</summary>
    public double GlueEnd { get; init; } = 10;

    /// <summary>On the back of a tapered tread that is glued up; default 10.</summary>
    public double GlueBack { get; init; } = 10;
}

/// <summary>A board of the stock list, in one or several lengths.</summary>
public sealed record ShopBoard
{
    /// <summary>Timber, in the words of the job.</summary>
    public string Material { get; init; } = "";

    /// <summary>Sawn thickness, mm.</summary>
    public double Thickness { get; init; }

    /// <summary>Sawn width, mm.</summary>
    public double Width { get; init; }

    /// <summary>Lengths, mm.</summary>
    public ImmutableArray<double> Lengths { get; init; } = [];

    /// <summary>Price of a metre; null where each board has a price.</summary>
    public double? PricePerMetre { get; init; }

    /// <summary>Price of each board; null where it is sold by the metre.</summary>
    public double? Price { get; init; }

    /// <summary>How many of each length there are; null where more can be had.</summary>
    public double? Quantity { get; init; }

    /// <summary>Grade, in the shop's words; empty for none.</summary>
    public string Grade { get; init; } = "";

    /// <summary>Price of one board of a length, to the penny.</summary>
    public double PriceOf(double length) => Price ?? Math.Round((PricePerMetre ?? 0) * length / 1000, 2);

    /// <summary>Equal when all of it is.</summary>
    public bool Equals(ShopBoard? other) => other is not null && Material == other.Material && Thickness == other.Thickness && Width == other.Width && Lengths.SequenceEqual(other.Lengths)
        && PricePerMetre == other.PricePerMetre && Price == other.Price && Quantity == other.Quantity && Grade == other.Grade;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Material, Thickness, Width, Lengths.Length, Price);
}

/// <summary>A sheet of the stock list.</summary>
public sealed record ShopSheet
{
    /// <summary>Material, in the words of the job.</summary>
    public string Material { get; init; } = "";

    /// <summary>Thickness, mm.</summary>
    public double Thickness { get; init; }

    /// <summary>Along the grain, mm.</summary>
    public double Length { get; init; }

    /// <summary>Across the grain, mm.</summary>
    public double Width { get; init; }

    /// <summary>Price of a sheet.</summary>
    public double Price { get; init; }
}

/// <summary>A board left over from an earlier job.</summary>
public sealed record ShopOffcut
{
    /// <summary>What is written on it.</summary>
    public string Id { get; init; } = "";

    /// <summary>Timber, in the words of the job.</summary>
    public string Material { get; init; } = "";

    /// <summary>Sawn thickness, mm.</summary>
    public double Thickness { get; init; }

    /// <summary>Width, mm.</summary>
    public double Width { get; init; }

    /// <summary>Length, mm.</summary>
    public double Length { get; init; }
}

/// <summary>Something that is used up by the piece.</summary>
public sealed record ShopFixing
{
    /// <summary>What it is.</summary>
    public string Name { get; init; } = "";

    /// <summary>What it is counted by, one of <see cref="ShopFields.Counted"/>.</summary>
    public string Per { get; init; } = "";

    /// <summary>Price for each.</summary>
    public double Price { get; init; }
}

/// <summary>An operation and what it takes.</summary>
public sealed record ShopOperation
{
    /// <summary>What is done.</summary>
    public string Name { get; init; } = "";

    /// <summary>What it is counted by, one of <see cref="ShopFields.Counted"/>.</summary>
    public string Per { get; init; } = "";

    /// <summary>Minutes for each.</summary>
    public double Minutes { get; init; }
}

/// <summary>What prices are reckoned with.</summary>
public sealed record ShopRates
{
    /// <summary>Price of an hour's work.</summary>
    public double Hour { get; init; }

    /// <summary>Timber and sheets bought over what the board plan asks for, in a hundred; default 10 (common practice for softwood: 5 to 10).</summary>
    public double Waste { get; init; } = 10;

    /// <summary>On top of all costs, in a hundred; default 20.</summary>
    public double Margin { get; init; } = 20;
}
