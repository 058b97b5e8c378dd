using System.Globalization;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>Everything the ear says: ratings, agreement, forced choices, and the extra readings it called for. By code only.</summary>
/// <param name="Ratings">Per attribute and code, against the reference.</param>
/// <param name="Agreements">Per pair of raters.</param>
/// <param name="Concordances">Per attribute, with three codes and more.</param>
/// <param name="Choices">Per planned set of trials.</param>
/// <param name="Extras">Per kind of extra reading.</param>
/// <param name="Covered">How many ratings are still covered and not in any of it.</param>
public sealed record EarFindings(
    IReadOnlyList<RatingFinding> Ratings,
    IReadOnlyList<AgreementFinding> Agreements,
    IReadOnlyList<ConcordanceFinding> Concordances,
    IReadOnlyList<ChoiceFinding> Choices,
    IReadOnlyList<ExtraFinding> Extras,
    int Covered
)
{
    /// <summary>Whether the ear says nothing at all.</summary>
    public bool IsEmpty => Ratings.Count + Choices.Count + Extras.Count + Covered == 0;

    /// <summary>The findings of a study; covered ratings and counts are left out.</summary>
    /// <param name="study">The study.</param>
    /// <param name="terms">Reference and margins.</param>
    public static EarFindings Of(Study study, ComparisonTerms terms)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(terms);
        RatedScore[] scores = [.. RatingCover.Open(study).Select(rating => ScoreOf(study, rating))];
        string? anchored = study.ReferenceCode?.Digits;
        string reference = terms.Reference ?? anchored ?? "";
        string[] codes = [.. study.Codes.Select(code => code.Digits)];
        string[] attributes = [.. RatedAttribute.Of(study.Plan).Select(a => a.Name).Where(name => scores.Any(s => s.Attribute == name))];
        double anchor = Score.Anchor.Points;
        return new EarFindings(
            RatingFinding.Together([
                .. from attribute in attributes
                from code in codes
                where code != reference
                let finding = RatingFinding.Of(attribute, code, reference, scores, anchored, anchor)
                where finding is not null
                select finding,
            ]),
            [.. AgreementFinding.Of([.. scores.Where(s => s.Code != anchored)])],
            [
                .. attributes
                    .Select(attribute => ConcordanceFinding.Of(attribute, codes, scores, anchored, anchor))
                    .OfType<ConcordanceFinding>(),
            ],
            [.. study.ChoiceSets.Select(set => ChoiceFinding.Of(study, set))],
            [.. ExtraFinding.Of(study, terms)],
            study.Ratings.Count - scores.Length
        );
    }

    /// <summary>
    /// The set that the ear's word on a pair rests on: the first that was planned for it, so that no later set can be picked by its
    /// result. Null: none was planned.
    /// </summary>
    public ChoiceFinding? MainChoice(string code, string reference) =>
        Choices.FirstOrDefault(choice => choice.Terms.IsPair(new SpecCode(code), new SpecCode(reference)));

    private static RatedScore ScoreOf(Study study, SeatRating rating)
    {
        Run run = study.Runs[rating.Run - 1];
        string day = run.Started.At.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return new RatedScore(rating.Person, rating.Seat, day, rating.Run, run.Code.Digits, rating.Attribute, rating.Score.Points);
    }
}

/// <summary>One kind of extra reading, compared by the method of the main readings but apart from them.</summary>
/// <param name="Name">What it is, such as "dB(C)".</param>
/// <param name="Readings">How many were noted.</param>
/// <param name="Comparison">What they say.</param>
public sealed record ExtraFinding(string Name, int Readings, Comparison Comparison)
{
    private static (string Name, bool IsOfRing, Func<Extras, double?> Part)[] Parts =>
        [
            ("dB(C)", false, extras => extras.CDb),
            (EarRemarkWords.LevelAt200Hz, true, extras => extras.Band200Db),
            (EarRemarkWords.LevelAt250Hz, true, extras => extras.Band250Db),
        ];

    /// <summary>
    /// The kinds of which anything was noted. A spoilt reading's extras are spoilt with it. Bands that hold the ring are told once it is
    /// uncovered: by code they would tell what is behind one (<see cref="RingCover"/>).
    /// </summary>
    /// <param name="study">The study.</param>
    /// <param name="terms">How the day is compared.</param>
    public static IEnumerable<ExtraFinding> Of(Study study, ComparisonTerms terms)
    {
        ArgumentNullException.ThrowIfNull(study);
        MeasuredDay day = StudyReadings.Of(study);
        Reading[] readings = [.. study.Runs.SelectMany(StudyReadings.InRouteOrder)];
        foreach ((string name, _, Func<Extras, double?> part) in Parts.Where(part => !part.IsOfRing || RingCover.IsOpen(study)))
        {
            // The day's levels are in the order of the runs and their readings.
            MeasuredLevel[] levels =
            [
                .. day
                    .Levels.Zip(readings, (level, reading) => (Level: level, Db: reading.Extras is { } extras ? part(extras) : null))
                    .Where(pair => pair.Db is not null)
                    .Select(pair => pair.Level with { LowDb = pair.Db!.Value, HighDb = pair.Db!.Value }),
            ];
            if (levels.Length > 0)
            {
                yield return new ExtraFinding(name, levels.Length, BlindComparison.Of(day with { Levels = levels, Missed = 0 }, terms));
            }
        }
    }
}
