using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Rating;

/// <summary>What the rating page is made from.</summary>
/// <param name="Study">The study.</param>
/// <param name="Rater">Who sits at the keyboard, alone; null: nobody has said so yet.</param>
/// <param name="Skipped">Attributes that this person passed over this time.</param>
/// <param name="IsParked">Whether somebody has said that the car is parked.</param>
/// <param name="Message">Words about the last key or line; null: none.</param>
internal sealed record RateSight(Study Study, CrewMember? Rater, ImmutableHashSet<string> Skipped, bool IsParked, string? Message)
{
    /// <summary>Number of the set whose order is shown to the one who runs it, alone; null: none.</summary>
    public int? Slip { get; init; }

    /// <summary>How the name of the attribute is written.</summary>
    public LetterForm Letters { get; init; }

    /// <summary>The attribute that comes next for the rater; null: none is left, or nobody rates.</summary>
    public RatedAttribute? Next => Rater is { } rater && Study.LastRun is { } run
        ? RatedAttribute.Of(Study.Plan).FirstOrDefault(a => !Skipped.Contains(a.Name) && RatingCover.Of(Study, run.Number, rater.Name, a.Name) is null)
        : null;
}

/// <summary>The rating screen's words, and the row of its entry box.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="BoxRow">Row of the entry box.</param>
internal sealed record RateWords(ImmutableArray<PageRow> Rows, int BoxRow);
