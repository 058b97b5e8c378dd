using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Reads <c>run 417</c>, <c>run 417 driver=Ro</c>, <c>run 417 car=NAME</c>, and <c>end</c> or <c>abort</c> with the cause: words, or a cause letter.</summary>
public static class RunText
{
    private const string Driver = "driver=";
    private const string Car = "car=";
    private const string Form = DrivingWords.RunForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length > 0 && (Typed.Is(words[0], "end") || Typed.Is(words[0], "abort")))
        {
            return End(CauseIn(words), study);
        }

        return words.Length > 0 && Typed.Is(words[0], "run") ? Start(words) : null;
    }

    // said again at the stop, it is the cause of the run that was aborted
    private static Parsed End(string? cause, Study study) => study is { RunOn: null, LastRun: { Aborted: not null } aborted } && cause is not null
        ? Parsed.As(new AbortExplained(aborted.Number, cause))
        : Parsed.As(new RunEnded(true, cause));

    private static string? CauseIn(string[] words) => words switch
    {
        [_] => null,
        [_, { Length: 1 } letter] when SpoiltCauses.FromLetter(letter[0]) is { } cause => cause.Word(),
        _ => string.Join(' ', words.Skip(1)),
    };

    private static Parsed Start(string[] words)
    {
        if (words.Length < 2 || SpecCode.Parse(words[1]) is not { } code)
        {
            return Parsed.No(DrivingWords.RunIsStartedOnCode, Form);
        }

        RunStarted run = new(code, null);
        foreach (string word in words.Skip(2))
        {
            if (ValueOf(word, Driver) is null && ValueOf(word, Car) is null)
            {
                return Parsed.No(DrivingWords.IsNeitherDriverNorCar(word), Form);
            }

            run = run with { Driver = ValueOf(word, Driver) ?? run.Driver, Car = ValueOf(word, Car) ?? run.Car };
        }

        return Parsed.As(run);
    }

    private static string? ValueOf(string word, string name) =>
        word.StartsWith(name, StringComparison.OrdinalIgnoreCase) && word.Length > name.Length ? word[name.Length..] : null;
}
