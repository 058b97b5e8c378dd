using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Sealing;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'reveal'.</summary>
/// <param name="Study">The study file.</param>
/// <param name="Key">The custodian's key file.</param>
/// <param name="Marks">Marks read on the tyres, CODE=NAME; empty: they are asked for.</param>
/// <param name="Readers">Who read the marks; empty: they are asked for.</param>
internal sealed record RevealWords(string Study, string Key, IReadOnlyList<string> Marks, IReadOnlyList<string> Readers);

/// <summary>
/// The command 'reveal': opens the key after all predictions are locked, checks it against the commitment and against the
/// marks that two people read on the tyres. The marks are typed before any name is shown.
/// </summary>
internal static class RevealCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string> key = new("--key") { Description = "the custodian's key file", Required = true, HelpName = "KEYFILE" };
        Option<string[]> marks = new("--mark") { Description = "what stands on the tyres driven as a code, CODE=NAME; once for every code", HelpName = "CODE=NAME" };
        Option<string[]> readers = new("--reader") { Description = "who read the marks; two people", HelpName = "NAME" };
        Command command = new("reveal", "opens the key, after all predictions are locked") { study, key, marks, readers };
        command.SetAction(typed =>
        {
            RevealWords words = new(typed.GetRequiredValue(study), typed.GetRequiredValue(key), typed.GetValue(marks) ?? [], typed.GetValue(readers) ?? []);
            using OpenedStudy opened = OpenedStudy.At(words.Study, outside);
            return Run(opened.Logbook, words, outside);
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

        string passphrase = outside.Passphrase ?? outside.Ask("passphrase of the key file: ") ?? "";
        KeyOpening opening = new KeyFile(outside.Lot).Open(words.Key, study.Plan!.StudyName, study.Fitting?.Commitment, passphrase);
        if (opening.Key is not { } key)
        {
            outside.Error.WriteLine(opening.Words);
            return CodeOf(opening.Fault);
        }

        return Marks(study, words, outside) is { } marks
            ? Write(logbook, Opener.Fact(study, key, marks, Readers(words, outside)), outside)
            : ExitCode.Wrong;
    }

    private static int Write(Logbook logbook, KeyOpened fact, Surroundings outside)
    {
        int code = Answer.To(logbook.Write(fact), outside);
        OpenedKey? key = OpenedKey.In(logbook.Entries);
        if (code != ExitCode.Done || key is null)
        {
            return code;
        }

        foreach (CodedSpec coded in key.Key)
        {
            outside.Output.WriteLine($"{coded.Code} {coded.Spec}{(coded.Spec == key.Control ? " (control)" : "")}");
        }

        foreach (Note note in key.NotesThatName(logbook.Study))
        {
            outside.Output.WriteLine($"look out: the note of line {note.Mark.Number}, written before the reveal, names a spec: {note.Words}");
        }

        return key.NamesAllowed ? ExitCode.Done : ExitCode.No;
    }

    private static List<MarkRead>? Marks(Study study, RevealWords words, Surroundings outside)
    {
        IEnumerable<string> typed = words.Marks.Count > 0
            ? words.Marks
            : study.Codes.ToArray().Select(code => $"{code}={outside.Ask($"mark under the tape of the tyres driven as {code}: ")}");
        List<MarkRead> marks = [];
        foreach (string one in typed)
        {
            (MarkRead? mark, Objection? objection) = Opener.Mark(one, study);
            if (mark is null)
            {
                outside.Error.WriteLine($"--mark {one.Split('=')[0]}: {objection}");
                return null;
            }

            marks.Add(mark);
        }

        return marks;
    }

    private static IEnumerable<string> Readers(RevealWords words, Surroundings outside) => words.Readers.Count > 0
        ? words.Readers
        : ReaderPlaces
            .Select(which => outside.Ask($"{which} reader of the marks: ")?.Trim() ?? "")
            .Where(name => name.Length > 0)
            .ToArray();

    private static string[] ReaderPlaces => ["first", "second"];

    private static int CodeOf(KeyFault? fault) => fault switch
    {
        KeyFault.NoSuchFile => ExitCode.Wrong,
        KeyFault.Unreadable or KeyFault.Damaged => ExitCode.Damaged,
        _ => ExitCode.No,
    };
}
