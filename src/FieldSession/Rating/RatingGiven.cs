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
    public override Objection? ObjectionIn(Study study) => EarGate.ObjectionIn(study, "ratings")
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
            ? rated with { Undoables = [] }
            : rated.Undoably(study, mark, $"rating of {Attribute} by {member.Name}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string[] open = after.LastRun is { } run ? [.. RatingCover.StillToRate(after, run.Number, Attribute).Select(m => m.Name)] : [];
        string cover = open.Length > 0 ? $"; covered until {string.Join(" and ", open)} stored it too" : "; all have stored it";
        return new Echo($"{EarGate.MemberIn(after, Person)?.Name ?? Person} rated {Attribute} of {after.LastRun?.Code}, run {after.LastRun?.Number}{cover}");
    }

    private Objection? ObjectionToRun(Study study)
    {
        if (study.LastRun is not { } run)
        {
            return new Objection("nothing has been driven", "a rating belongs to the run just driven");
        }

        if (Code is { } code && code != run.Code)
        {
            return new Objection(
                study.Runs.Any(r => r.Code == code) ? $"the last run was on {run.Code}, not on {code}" : $"{code} has not been driven",
                $"rate {run.Code} now, and another code at the stop after its run");
        }

        return RatingCover.IsClosed(study, run.Number)
            ? new Objection($"the ratings of run {run.Number} are closed", "rate at the stop after the next run")
            : null;
    }

    private Objection? ObjectionToAttribute(Study study)
    {
        string[] names = [.. RatedAttribute.Of(study.Plan).Select(a => a.Name)];
        if (!names.Contains(Attribute))
        {
            return new Objection($"'{Attribute}' is not rated in this study", $"the attributes are {string.Join(", ", names)}");
        }

        return IsGiven(study, study.LastRun!)
            ? new Objection($"{Person} has rated {Attribute} of run {study.LastRun!.Number} already", "it stands; 'u' takes it back while it is the last act and covered")
            : null;
    }

    private Objection? ObjectionToScore(Study study)
    {
        if (!Score.IsScore(Score.Points))
        {
            return new Objection($"{Score} is off the scale", RatingText.Scale);
        }

        return study.LastRun!.Code == study.ReferenceCode && Score != Score.Anchor
            ? new Objection(
                $"{study.ReferenceCode} brackets the others and stands at {Score.Anchor} for every attribute",
                $"rate the other codes against it; nothing or {Score.Anchor} is typed for {study.ReferenceCode}")
            : null;
    }

    private bool IsGiven(Study study, Run run) => RatingCover.Of(study, run.Number, Person, Attribute) is not null;
}
