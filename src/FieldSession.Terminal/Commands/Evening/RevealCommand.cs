using System.CommandLine;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'reveal'.</summary>
/// <param name="Study">The study file.</param>
/// <param name="Keys">The custodian's key files, one for each fitting; empty: a paper key.</param>
/// <param name="Marks">Marks read on the tyres, CODE=NAME; empty: they are asked for.</param>
/// <param name="Readers">Who read the marks; empty: they are asked for.</param>
internal sealed record RevealWords(string Study, IReadOnlyList<string> Keys, IReadOnlyList<string> Marks, IReadOnlyList<string> Readers)
{
    /// <summary>Lines of a paper key, CODE=NAME.</summary>
    public IReadOnlyList<string> Paper { get; init; } = [];

    /// <summary>The control spec of a paper key; null: not told.</summary>
    public string? Control { get; init; }

    /// <summary>Whether marks that do not agree are stored as they were read, with the names withheld.</summary>
    public bool AsRead { get; init; }

    /// <summary>Whether the key is open, and the marks are read again.</summary>
    public bool IsAgain { get; init; }
}

/// <summary>
/// The command 'reveal': opens the key after all predictions are locked, checks it against the commitment and against the
/// marks that two people read on the tyres. The marks are typed and compared before anything is stored or a name is shown;
/// once the key is open they can be read again, and both readings are kept.
/// </summary>
internal static class RevealCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string[]> keys = new("--key") { Description = "the custodian's key file; once for every fitting", HelpName = "KEYFILE" };
        Option<string[]> paper = new("--paper")
        {
            Description = "a line of a paper key, CODE=NAME; once for every code; without either key its lines are asked for",
            HelpName = "CODE=NAME",
        };
        Option<string?> control = new("--control") { Description = "the control spec of a paper key", HelpName = "NAME" };
        Option<string[]> marks = new("--mark")
        {
            Description = "what is written on the tyres driven as a code, CODE=NAME; once for every code",
            HelpName = "CODE=NAME",
        };
        Option<string[]> readers = new("--reader") { Description = "who read the marks; two people", HelpName = "NAME" };
        Option<bool> asRead = new("--as-read") { Description = "stores marks that do not agree as they were read; the names are withheld" };
        Option<bool> again = new("--again")
        {
            Description = "the key is open: reads the marks of all driven codes again; every reading is kept",
        };
        Command command = new("reveal", "opens the key, after all predictions are locked")
        {
            study,
            keys,
            paper,
            control,
            marks,
            readers,
            asRead,
            again,
        };
        command.SetAction(typed =>
        {
            RevealWords words = new(
                typed.GetRequiredValue(study),
                typed.GetValue(keys) ?? [],
                typed.GetValue(marks) ?? [],
                typed.GetValue(readers) ?? []
            )
            {
                Paper = typed.GetValue(paper) ?? [],
                Control = typed.GetValue(control),
                AsRead = typed.GetValue(asRead),
                IsAgain = typed.GetValue(again),
            };
            using OpenedStudy opened = OpenedStudy.At(words.Study, outside);
            return words.IsAgain ? ReadAgain(opened.Logbook, words, outside) : Run(opened.Logbook, words, outside);
        });
        return command;
    }

    /// <summary>Opens the key.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(Logbook logbook, RevealWords words, Surroundings outside)
    {
        Study study = logbook.Study;
        if (KeyGate.ObjectionIn(study) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.No;
        }

        if (study.ChoiceSets.Find(set => set is { IsFromRecordings: true, IsComplete: false }) is { } open)
        {
            outside.Error.WriteLine(PlayWords.OpenAtTheReveal(open));
        }

        int code = KeysBrought.Gather(study, words, outside, out KeyRing ring);
        if (code != ExitCode.Done)
        {
            return code;
        }

        code = MarksGathered.Of(study, words, (marks, readers) => ring.Fact(study, marks, readers).Check, outside, out MarksGathered? read);
        return read is null ? code : Write(logbook, ring.Fact(study, read.Marks, read.Readers, read.Earlier), outside);
    }

    private static int ReadAgain(Logbook logbook, RevealWords words, Surroundings outside)
    {
        Study study = logbook.Study;
        if (MarksReadAgain.ObjectionNow(study) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.No;
        }

        OpenedKey key = OpenedKey.In(logbook.Entries)!;
        int code = MarksGathered.Of(
            study,
            words,
            (marks, readers) => MarkProof.Of(key.DrivenKey, marks, readers),
            outside,
            out MarksGathered? read
        );
        return read is null ? code : Write(logbook, key.ReadAgain(read.Marks, read.Readers), outside);
    }

    private static int Write(Logbook logbook, Journal.Entry fact, Surroundings outside)
    {
        int code = Answer.To(logbook.Write(fact), outside);
        OpenedKey? key = OpenedKey.In(logbook.Entries);
        if (code != ExitCode.Done || key is null)
        {
            return code;
        }

        foreach (CodedSpec coded in key.Key)
        {
            outside.Output.WriteLine($"{coded.Code} {coded.Spec}{(key.IsControl(coded.Code) == true ? " (control)" : "")}");
        }

        foreach (Note note in key.NotesThatName(logbook.Study))
        {
            outside.Output.WriteLine(
                $"look out: the note of line {note.Mark.Place}, written before the reveal, names a spec: {note.Words}"
            );
        }

        foreach (string why in key.WhyWithheld)
        {
            outside.Output.WriteLine($"the report gives codes and no names: {why}");
        }

        return key.NamesAllowed ? ExitCode.Done : ExitCode.No;
    }
}
