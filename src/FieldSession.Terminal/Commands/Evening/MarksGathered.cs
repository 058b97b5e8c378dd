using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>The marks as they were read on the tyres, compared with the key before anything is stored.</summary>
/// <param name="Marks">The reading that is to be stored.</param>
/// <param name="Readers">Who read it.</param>
/// <param name="Earlier">Readings before it that did not agree.</param>
internal sealed record MarksGathered(ImmutableList<MarkRead> Marks, ImmutableList<string> Readers, ImmutableList<MarkReading> Earlier)
{
    /// <summary>How often the marks may be read in one go.</summary>
    public const int Readings = 3;

    private static string[] ReaderPlaces => ["first", "second"];

    /// <summary>Takes the marks from the words of the command, or asks for them; those that do not agree are asked for again.</summary>
    /// <param name="study">The study.</param>
    /// <param name="words">What was typed behind 'reveal'.</param>
    /// <param name="compare">How marks and readers compare with the key.</param>
    /// <param name="outside">The world outside.</param>
    /// <param name="gathered">The marks; null where the code is not 0.</param>
    /// <returns>An exit code; where it is not 0, what is wrong has been said and nothing is to be stored.</returns>
    public static int Of(
        Study study,
        RevealWords words,
        Func<IReadOnlyCollection<MarkRead>, IReadOnlyCollection<string>, MarkCheck> compare,
        Surroundings outside,
        out MarksGathered? gathered
    )
    {
        gathered = null;
        SpecCode[] due = [.. study.DrivenCodes];
        MarksGathered reading = new([], [], []);
        for (int attempt = 1; ; attempt++)
        {
            int code = Read(study, words, due, reading, outside, out MarksGathered? read);
            if (read is null)
            {
                return code;
            }

            reading = read;
            MarkCheck check = compare(reading.Marks, reading.Readers);
            if (check.Holds || words.AsRead)
            {
                gathered = reading;
                return ExitCode.Done;
            }

            Say(check, outside);
            if (words.Marks.Count > 0 || attempt == Readings)
            {
                outside.Error.WriteLine(CommandWords.NothingIsStored);
                return ExitCode.No;
            }

            due = [.. check.Differ, .. check.NotRead];
            reading = new(
                reading.Marks.RemoveAll(mark => due.Contains(mark.Code)),
                check.ReadByTwo ? reading.Readers : [],
                reading.Earlier.Add(new MarkReading(outside.Clock.GetUtcNow(), reading.Marks))
            );
        }
    }

    private static int Read(
        Study study,
        RevealWords words,
        SpecCode[] due,
        MarksGathered before,
        Surroundings outside,
        out MarksGathered? read
    )
    {
        read = null;
        List<MarkRead> marks = [.. before.Marks];
        foreach (string one in words.Marks.Count > 0 ? words.Marks : Asked(due, outside))
        {
            (MarkRead? mark, Objection? objection) = Opener.Mark(one, study);
            if (mark is null)
            {
                outside.Error.WriteLine($"--mark {one.Split('=')[0]}: {objection}");
                return ExitCode.Wrong;
            }

            marks.Add(mark);
        }

        read = before with { Marks = [.. marks], Readers = before.Readers.IsEmpty ? [.. ReadersIn(words, outside)] : before.Readers };
        return ExitCode.Done;
    }

    private static IEnumerable<string> Asked(SpecCode[] due, Surroundings outside) =>
        due.Select(code => $"{code}={outside.Ask(CommandWords.AskForMark(code))}");

    private static IEnumerable<string> ReadersIn(RevealWords words, Surroundings outside) =>
        words.Readers.Count > 0
            ? words.Readers
            : ReaderPlaces
                .Select(which => outside.Ask(CommandWords.AskForReader(which))?.Trim() ?? "")
                .Where(name => name.Length > 0)
                .ToArray();

    private static void Say(MarkCheck check, Surroundings outside)
    {
        foreach (string failed in WithheldWords.Of(check with { ReadByTwo = true }, null))
        {
            outside.Error.WriteLine(CommandWords.ReadAgain(failed));
        }

        foreach (string failed in check.ReadByTwo ? [] : WithheldWords.Of(new MarkCheck([], [], ReadByTwo: false), null))
        {
            outside.Error.WriteLine(CommandWords.NameTwoReaders(failed));
        }
    }
}
