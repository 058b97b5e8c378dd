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
}

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
        Option<string[]> keys = new("--key") { Description = "the custodian's key file; once for every fitting", HelpName = "KEYFILE" };
        Option<string[]> paper = new("--paper") { Description = "a line of a paper key, CODE=NAME; once for every code; without a key of either sort its lines are asked for", HelpName = "CODE=NAME" };
        Option<string?> control = new("--control") { Description = "the control spec of a paper key", HelpName = "NAME" };
        Option<string[]> marks = new("--mark") { Description = "what stands on the tyres driven as a code, CODE=NAME; once for every code", HelpName = "CODE=NAME" };
        Option<string[]> readers = new("--reader") { Description = "who read the marks; two people", HelpName = "NAME" };
        Command command = new("reveal", "opens the key, after all predictions are locked") { study, keys, paper, control, marks, readers };
        command.SetAction(typed =>
        {
            RevealWords words = new(
                typed.GetRequiredValue(study), typed.GetValue(keys) ?? [], typed.GetValue(marks) ?? [], typed.GetValue(readers) ?? [])
            {
                Paper = typed.GetValue(paper) ?? [],
                Control = typed.GetValue(control),
            };
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

        int code = KeysAtHand.Gather(study, words, outside, out KeyRing ring);
        if (code != ExitCode.Done)
        {
            return code;
        }

        return Marks(study, words, outside) is { } marks
            ? Write(logbook, ring.Fact(study, marks, Readers(words, outside)), outside)
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
            outside.Output.WriteLine($"{coded.Code} {coded.Spec}{(key.IsControl(coded.Code) == true ? " (control)" : "")}");
        }

        foreach (Note note in key.NotesThatName(logbook.Study))
        {
            outside.Output.WriteLine($"look out: the note of line {note.Mark.Place}, written before the reveal, names a spec: {note.Words}");
        }

        return key.NamesAllowed ? ExitCode.Done : ExitCode.No;
    }

    private static List<MarkRead>? Marks(Study study, RevealWords words, Surroundings outside)
    {
        IEnumerable<string> typed = words.Marks.Count > 0
            ? words.Marks
            : study.DrivenCodes.ToArray().Select(code => $"{code}={outside.Ask($"mark under the tape of the tyres driven as {code}: ")}");
        List<MarkRead> marks = [];
        foreach (string one in typed)
        {
            (MarkRead? mark, Journal.Objection? objection) = Opener.Mark(one, study);
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
}
