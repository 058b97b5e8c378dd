using FieldSession.Journal;
using FieldSession.Merging;
using FieldSession.Predicting;
using FieldSession.Rating;
using FieldSession.Revealing;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession;

/// <summary>A line of the journal that breaks a rule of the blind although its hash holds.</summary>
/// <param name="Line">Place in the journal, from 1.</param>
/// <param name="Why">Which rule it breaks.</param>
public sealed record RuleBroken(int Line, string Why);

/// <summary>
/// What a journal must hold to beyond its hashes, told again from its lines alone: every entry can be read, a commitment is a hash, nothing
/// but predictions, the reveal, decisions on conflicts, trials from recordings and notes follows the first locked prediction, nothing but
/// notes and marks read again follows the reveal (as far as its laptop knew of them), the opened key gives the commitments as it says, and
/// marks read again compare with it as their line says. A program that follows the rules never writes a line that breaks one; whoever
/// writes a whole new chain by hand can.
/// </summary>
public static class JournalRules
{
    /// <summary>The lines that break a rule, in order; empty: none does.</summary>
    public static IEnumerable<RuleBroken> BrokenIn(IReadOnlyList<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        Dictionary<Line, int> places = lines
            .Index()
            .ToDictionary(line => line.Item, line => line.Index + 1, ReferenceEqualityComparer.Instance as IEqualityComparer<Line>);
        OpenedKey? key = null;
        foreach (Told told in Telling.Of(lines, isTolerant: true))
        {
            key = told.Entry is KeyOpened opened ? OpenedKey.In([opened]) : key;
            if (told.Entry is null)
            {
                yield return new RuleBroken(places[told.Line], LogbookWords.EntryCantBeRead(told));
            }
            else if (
                (told.Entry is MarksReadAgain again ? WhyBroken(again, key) : WhyBroken(told.Entry, told.Before, told.After)) is { } why
            )
            {
                yield return new RuleBroken(places[told.Line], why);
            }
        }
    }

    private static string? WhyBroken(Entry entry, Study before, Study after) =>
        entry switch
        {
            EntryByNewerProgram newer => LogbookWords.EntryNeedsNewerProgram(newer),
            SpecsSealed { Commitment: { } commitment } when !IsHash(commitment) => LogbookWords.CommitmentIsNotHexDigits,
            StrandJoined => null,
            _ when before.Opening is { } opening && before.Hand.Knows(opening.Mark) => IsNoteAdded(before, after)
                ? null
                : LogbookWords.SomethingOtherThanNoteFollowsReveal,
            ConflictSettled or ChoiceTrialsPlanned { FromRecordings: true } => null,
            PredictionLocked prediction => WhyBroken(prediction, before),
            KeyOpened opened => WhyBroken(opened, before),
            ChoiceMade { Clips: not null } => WhyPlayed(before),
            _ => before.Predictions.Exists(p => before.Hand.Knows(p.Mark)) && !IsNoteAdded(before, after)
                ? LogbookWords.DataFollowFirstLockedPrediction
                : null,
        };

    private static string? WhyPlayed(Study before) => before.StillToPredict.Any() ? LogbookWords.ClipsPlayedBeforeAllPredictions : null;

    private static string? WhyBroken(MarksReadAgain again, OpenedKey? key) =>
        key is null ? LogbookWords.MarksReadBeforeReveal
        : key.ReadAgain(again.Marks, again.Readers).Differ.SequenceEqual(again.Differ) ? null
        : LogbookWords.MarksAreNotAsLineSays;

    private static string? WhyBroken(PredictionLocked prediction, Study before) =>
        before.Predictions.Exists(p => CrewMember.SamePerson(p.Person, prediction.Person) && before.Hand.Knows(p.Mark))
            ? LogbookWords.SecondPredictionOf(prediction)
            : null;

    private static string? WhyBroken(KeyOpened opened, Study before) =>
        before.StillToPredict.Any() ? LogbookWords.KeyOpenedBeforeAllPredictions
        : CommitmentProof.Of(before, opened) != opened.CommitmentHolds ? LogbookWords.CommitmentIsNotAsLineSays
        : null;

    private static bool IsHash(string text) => text.Length == 64 && text.All(c => char.IsAsciiHexDigitLower(c) || char.IsAsciiDigit(c));

    private static bool IsNoteAdded(Study before, Study after) =>
        after with { Notes = before.Notes } == before
        && after.Notes.Count > before.Notes.Count
        && after.Notes.Take(before.Notes.Count).SequenceEqual(before.Notes);
}
