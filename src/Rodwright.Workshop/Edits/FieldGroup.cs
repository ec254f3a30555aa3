using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Edits;

/// <summary>Fields that people look for in one place.</summary>
/// <param name="Name">Heading, in bench words.</param>
/// <param name="Fields">In the order shown.</param>
public sealed record FieldGroup(string Name, ImmutableArray<FieldDescription> Fields);
