using System.Collections.Immutable;
using Rodwright.Drawings.Formats.Models;

namespace Rodwright.Drawings.Formats.Ifc;

/// <summary>A building element put together from others, for an IFC file.</summary>
/// <param name="Title">Its name, and the project's.</param>
/// <param name="Date">The day the file is made.</param>
/// <param name="Entity">Of the standard: IFCSTAIR.</param>
/// <param name="Type">One of the standard's predefined types: QUARTER_WINDING_STAIR. For USERDEFINED <paramref name="ObjectType"/> tells it.</param>
/// <param name="ObjectType">In words.</param>
/// <param name="PropertySet">Name of one of the standard's property sets: Pset_StairCommon.</param>
/// <param name="Properties">Its properties.</param>
/// <param name="Elements">What it is put together from.</param>
public sealed record IfcModel(
    string Title, DateOnly Date, string Entity, string Type, string ObjectType, string PropertySet, ImmutableArray<IfcProperty> Properties, ImmutableArray<IfcElement> Elements);

/// <summary>A property.</summary>
/// <param name="Name">As the standard has it: NumberOfRiser.</param>
/// <param name="Measure">Type of its value: IFCCOUNTMEASURE (a whole number), IFCPOSITIVELENGTHMEASURE (mm).</param>
/// <param name="Value">The value.</param>
public sealed record IfcProperty(string Name, string Measure, double Value);

/// <summary>A piece and what it is in the standard's terms.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Entity">IFCMEMBER, IFCPLATE, IFCRAILING.</param>
/// <param name="Type">Predefined type: STRINGER, POST; USERDEFINED when <paramref name="ObjectType"/> tells it.</param>
/// <param name="ObjectType">In words: "tread".</param>
public sealed record IfcElement(ModelPiece Piece, string Entity, string Type, string ObjectType);
