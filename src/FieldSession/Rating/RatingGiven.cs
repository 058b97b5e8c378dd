using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// Someone rated one attribute of the code that was driven last, alone. The answer never repeats the number: the
/// others may be looking.
/// </summary>
/// <param name="Person">Who rates.</param>
/// <param name="Attribute">What is rated, by its whole name.</param>
/// <param name="Score">What they give.</param>
/// <param name="Seat">Where they sat; null: the run and the plan say it.</param>
/// <param name="Code">The code that they mean; null: the last run's.</param>
public sealed record RatingGiven(string Person, string Attribute, Score Score, string? Seat = null, SpecCode? Code = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        EarGate.ObjectionIn(study, "ratings")
        ?? ObjectionToRun(study)
        ?? EarGate.ObjectionTo(study, Person)
        ?? ObjectionToAttribute(study)
        ?? ObjectionToScore(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.LastRun is not { } run || EarGate.MemberIn(study, Person) is not { } member || IsGiven(study, run))
        {
            return study;
        }

        SeatRating rating = new(member.Name, Seat ?? EarGate.SeatIn(run, member), run.Number, Attribute, Score, mark);
        Study rated = study with { Ratings = study.Ratings.Add(rating) };

        // Once the others' numbers are uncovered, nobody may take the own one back and give another.
        return RatingCover.IsOpen(rated, rating)
            ? rated with
            {
                Undoables = [],
            }
            : rated.Undoably(study, mark, RatingWords.RatingOfAttributeBy(Attribute, member));
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string[] open = after.LastRun is { } run ? [.. RatingCover.StillToRate(after, run.Number, Attribute).Select(m => m.Name)] : [];
        string cover = open.Length > 0 ? RatingWords.RatingCoveredUntil(string.Join(" and ", open)) : RatingWords.AllHaveStoredRating;
        return new Echo(RatingWords.RatingStored(EarGate.MemberIn(after, Person)?.Name ?? Person, Attribute, after, cover));
    }

    private Objection? ObjectionToRun(Study study)
    {
        if (study.LastRun is not { } run)
        {
            return new Objection(JournalWords.NothingHasBeenDriven, RatingWords.RatingBelongsToLastRun);
        }

        if (Code is { } code && code != run.Code)
        {
            return new Objection(
                study.Runs.Any(r => r.Code == code) ? RatingWords.LastRunWasOnOtherCode(run, code) : RatingWords.CodeIsNotDriven(code),
                RatingWords.RateLastCodeNow(run)
            );
        }

        return RatingCover.IsClosed(study, run.Number)
            ? new Objection(RatingWords.RatingsAreClosed(run), RatingWords.RateAfterNextRun)
            : null;
    }

    private Objection? ObjectionToAttribute(Study study)
    {
        string[] names = [.. RatedAttribute.Of(study.Plan).Select(a => a.Name)];
        if (!names.Contains(Attribute))
        {
            return new Objection(RatingWords.AttributeIsNotRated(Attribute), RatingWords.AttributesAre(string.Join(", ", names)));
        }

        return IsGiven(study, study.LastRun!)
            ? new Objection(RatingWords.PersonHasRatedAlready(Person, Attribute, study.LastRun!), RatingWords.RatingIsStored)
            : null;
    }

    private Objection? ObjectionToScore(Study study)
    {
        if (!Score.IsScore(Score.Points))
        {
            return new Objection(RatingWords.ScoreIsOffScale(Score), RatingText.Scale);
        }

        return study.LastRun!.Code == study.ReferenceCode && Score != Score.Anchor
            ? new Objection(RatingWords.ReferenceHasFixedScore(study), RatingWords.RateOthersAgainstReference(study))
            : null;
    }

    private bool IsGiven(Study study, Run run) => RatingCover.Of(study, run.Number, Person, Attribute) is not null;
}

/// <summary>Nobody will rate the last run any more: what was given is uncovered, and what was skipped stays skipped.</summary>
public sealed record RatingsClosed : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        EarGate.ObjectionIn(study, "ratings")
        ?? (
            study.LastRun switch
            {
                null => new Objection(JournalWords.NothingHasBeenDriven, RatingWords.RatingsAreClosedAfterRun),
                { } run when RatingCover.IsClosed(study, run.Number) => new Objection(RatingWords.RatingsAreClosedAlready(run), "go on"),
                _ => null,
            }
        );

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.LastRun is { } run ? study with { RatingsClosed = study.RatingsClosed.Add(run.Number), Undoables = [] } : study;
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(RatingWords.RatingsClosedAndUncovered(after));
    }
}
