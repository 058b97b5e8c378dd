namespace FieldSession.Journal;

/// <summary>That a fact was logged on paper and typed in afterwards. Its line keeps the time of typing besides.</summary>
/// <param name="At">When it happened, as the paper says, with the crew's offset from UTC.</param>
/// <param name="FlaggedOnSpot">Whether the paper says that its flag was given on the spot; null: it does not.</param>
public sealed record OnPaper(DateTimeOffset At, bool? FlaggedOnSpot = null);
