namespace FieldSession.Journal;

/// <summary>An act that the disk would not take: it does not count, and what was typed is kept so that it can be typed in again.</summary>
/// <param name="At">When it was tried first.</param>
/// <param name="Typed">The typed line; for a fact put together from several answers, a remark that says it.</param>
/// <param name="Because">Why the disk would not take it.</param>
public sealed record UnsavedAct(DateTimeOffset At, string Typed, string Because);
