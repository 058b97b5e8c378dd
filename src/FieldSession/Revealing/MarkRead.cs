using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>What two people read under the tape of the tyres that were driven as a code.</summary>
/// <param name="Code">The code.</param>
/// <param name="Spec">The mark found on the tyres: the spec's name, or the letters drawn for it.</param>
public sealed record MarkRead(SpecCode Code, string Spec);

/// <summary>One reading of the marks.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Marks">What was read.</param>
public sealed record MarkReading(DateTimeOffset At, ImmutableList<MarkRead> Marks);
