using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>
/// Reads <c>calibration before 94.0</c> and <c>calibration after 93.9</c>. <c>calibration 94.0</c> alone is the one before until a run
/// of the session is driven, and the one after once the order is driven to its end.
/// </summary>
public static class CalibrationText
{
    private const string Form = CheckingWords.CalibrationForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "calibration"))
        {
            return null;
        }

        if (IsAfter(words, study) is not { } after)
        {
            return Parsed.No(CheckingWords.CalibrationNamesTimeAndLevel, Form);
        }

        return Typed.Number(words[^1]) is { } levelDb && levelDb is >= 50 and <= 140
            ? Parsed.As(new CalibrationChecked(after, levelDb))
            : Parsed.No(CheckingWords.IsNoLevelOfCalibrator(words[^1]), Form);
    }

    private static bool? IsAfter(string[] words, Study study) => words switch
    {
        [_, var when, _] when Typed.Is(when, "before") => false,
        [_, var when, _] when Typed.Is(when, "after") => true,
        [_, _] => DueNow(study),
        _ => null,
    };

    // in the middle of a session the one after would close it, so it has to be said
    private static bool? DueNow(Study study) => study switch
    {
        { SessionOn: { } session, LastRun: { } run } when run.Session == session.Number => study.OrderDriven ? true : null,
        _ => false,
    };
}
