using FieldSession.Journal;

namespace FieldSession.Checking;

/// <summary>Reads <c>calibration before 94.0</c> and <c>calibration after 93.9</c>.</summary>
public static class CalibrationText
{
    private const string Form = CheckingWords.CalibrationForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "calibration"))
        {
            return null;
        }

        if (words.Length != 3 || !(Typed.Is(words[1], "before") || Typed.Is(words[1], "after")))
        {
            return Parsed.No(CheckingWords.CalibrationNamesTimeAndLevel, Form);
        }

        return Typed.Number(words[2]) is { } levelDb && levelDb is >= 50 and <= 140
            ? Parsed.As(new CalibrationChecked(Typed.Is(words[1], "after"), levelDb))
            : Parsed.No(CheckingWords.IsNoLevelOfCalibrator(words[2]), Form);
    }
}
