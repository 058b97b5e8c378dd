using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Sealing;

namespace FieldSession.Terminal.Commands;

/// <summary>Gathers what opens a study: key files with their passphrases, lines of a paper key. Nothing of them is shown.</summary>
internal static class KeysBrought
{
    /// <summary>Puts every key that was given on a ring that opens the study.</summary>
    /// <returns>An exit code; where it is not 0 the ring is of no use, and what is wrong has been said.</returns>
    public static int Gather(Study study, RevealWords words, Surroundings outside, out KeyRing ring)
    {
        ring = KeyRing.Empty;
        bool isNoneGiven = words.Keys.Count == 0 && words.Paper.Count == 0;
        if (isNoneGiven && study.Commitments.Any())
        {
            outside.Error.WriteLine(CommandWords.GiveEveryKeyFile);
            return ExitCode.Wrong;
        }

        int code = AddFiles(study, words.Keys, outside, ref ring);
        return code != ExitCode.Done ? code : AddPaper(study, isNoneGiven ? Asked(study, words, outside) : words, outside, ref ring);
    }

    private static int AddFiles(Study study, IReadOnlyList<string> paths, Surroundings outside, ref KeyRing ring)
    {
        KeyFile file = outside.KeyFile;
        string[] commitments = [.. study.Commitments];
        foreach (string path in paths)
        {
            KeyOpening opening = KeyPhrases.Open(path, phrase => file.OpenOneOf(path, study.Plan!.StudyName, commitments, phrase), outside);
            if (opening.Key is null)
            {
                outside.Error.WriteLine($"{path}: {opening.Words}");
                return KeyPhrases.CodeOf(opening.Fault);
            }

            ring = ring.With(opening.Key);
        }

        return ExitCode.Done;
    }

    private static int AddPaper(Study study, RevealWords words, Surroundings outside, ref KeyRing ring)
    {
        if (!TryPaper(study, words, outside, ref ring))
        {
            return ExitCode.Wrong;
        }

        if (ring.ObjectionIn(study) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.No;
        }

        return ExitCode.Done;
    }

    // What is on paper is typed unseen: the marks are read before a name is shown.
    private static RevealWords Asked(Study study, RevealWords words, Surroundings outside) =>
        words with
        {
            Paper =
            [
                .. study.DrivenCodes.ToArray().Select(code => $"{code}={outside.AskSecret($"spec behind {code} by the paper key: ")}"),
            ],
            Control = outside.AskSecret(CommandWords.AskForControl) is { Length: > 0 } control ? control.Trim() : null,
        };

    private static bool TryPaper(Study study, RevealWords words, Surroundings outside, ref KeyRing ring)
    {
        List<CodedSpec> lines = [];
        foreach (string typed in words.Paper)
        {
            (CodedSpec? line, Objection? objection) = Opener.PaperLine(typed, study);
            if (line is null)
            {
                outside.Error.WriteLine($"--paper {typed.Split('=')[0]}: {objection}");
                return false;
            }

            lines.Add(line);
        }

        ring = lines.Count > 0 ? ring.WithPaper(lines, words.Control) : ring;
        return true;
    }
}
