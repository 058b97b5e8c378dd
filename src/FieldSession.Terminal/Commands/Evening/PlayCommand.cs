using System.Collections.Immutable;
using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Rating;
using FieldSession.Signals;
using FieldSession.State;
using FieldSession.Store.Recordings;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The command 'play': plays the trials of a set from recordings, code against code, between the last prediction and the reveal.
/// </summary>
internal static class PlayCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Argument<string[]> files = new("FILE")
        {
            Description = "the recordings that were listened to, or their folder",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string> player = new("--player")
        {
            Description = "your player; a WAV file is put behind it, and it ends when the clip ends",
            HelpName = "COMMAND",
            Required = true,
        };
        Option<string[]> people = new("--for")
        {
            Description = "who chooses; of several, each in turn",
            HelpName = "NAME",
            Required = true,
        };
        Option<int?> set = new("--set")
        {
            Description = "number of the set; default: the first from recordings that is open",
            HelpName = "N",
        };
        Command command = new(
            "play",
            "plays planned trials from recordings, blind, after the last prediction; more: 'fieldsession help recordings'"
        )
        {
            study,
            files,
            player,
            people,
            set,
        };
        command.SetAction(typed =>
            Run(
                new TypedPlaying(
                    typed.GetRequiredValue(study),
                    typed.GetRequiredValue(files),
                    typed.GetRequiredValue(player),
                    typed.GetRequiredValue(people),
                    typed.GetValue(set)
                ),
                outside
            )
        );
        return command;
    }

    /// <summary>Plays trial after trial until the set is at its end or somebody stops.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(TypedPlaying typed, Surroundings outside)
    {
        using OpenedStudy opened = OpenedStudy.At(typed.Study, outside);
        Study study = opened.Logbook.Study;
        ChoiceSet? set = SetIn(study, typed.Set);
        if (Against(study, set, typed.People) is { } objection)
        {
            outside.Error.WriteLine(objection);
            return ExitCode.No;
        }

        try
        {
            return Play(opened.Logbook, set!, typed, outside);
        }
        catch (Exception gone)
            when (gone is FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException or RecordingRefusedException)
        {
            outside.Error.WriteLine(PlayWords.CantBeRead);
            return ExitCode.Wrong;
        }
    }

    private static int Play(Logbook logbook, ChoiceSet set, TypedPlaying typed, Surroundings outside)
    {
        Study study = logbook.Study;
        ImmutableArray<RunRecording> recordings = [.. ClipPool.RecordingsOf(study, set.Terms)];
        ImmutableDictionary<string, string> found = ClipSound.Find(typed.Files, [.. recordings.Select(recording => recording.Sha256)]);
        ClipPool pool = ClipPool.Of(study, set.Terms, [.. found.Keys]);
        int[] missing = [.. recordings.Where(recording => !found.ContainsKey(recording.Sha256)).Select(recording => recording.Run)];
        if (missing.Length > 0)
        {
            outside.Error.WriteLine(PlayWords.NotFound(missing));
        }

        if (pool.Objection is { } none)
        {
            outside.Error.WriteLine(missing.Length > 0 ? PlayWords.TooFewFound : none.ToString());
            return ExitCode.No;
        }

        PlayedSet played = new(logbook, set.Number, pool, ClipsIn(pool, found));
        using ClipPlayer player = new(typed.Player, outside);
        return played.Run(player, typed.People, outside);
    }

    private static ChoiceSet? SetIn(Study study, int? asked) =>
        asked is { } number
            ? study.ChoiceSets.ElementAtOrDefault(number - 1)
            : study.ChoiceSets.Find(set => set is { IsFromRecordings: true, IsComplete: false })
                ?? study.ChoiceSets.FindLast(set => set.IsFromRecordings);

    private static Objection? Against(Study study, ChoiceSet? set, IReadOnlyList<string> people) =>
        set switch
        {
            null or { IsFromRecordings: false } => new Objection(PlayWords.NoSetFromRecordings, PlayWords.PlanOne(ExampleNames.In(study))),
            { IsComplete: true } => new Objection(PlayWords.SetIsAtItsEnd(set), PlayWords.PlanAnother),
            _ => ClipGate.AgainstPlaying(study)
                ?? people.Select(person => EarGate.ObjectionTo(study, person)).FirstOrDefault(one => one is not null),
        };

    // all of them before the first trial: afterwards no file is opened whose name could tell what is played
    private static ImmutableDictionary<Clip, byte[]> ClipsIn(ClipPool pool, ImmutableDictionary<string, string> found)
    {
        ImmutableDictionary<Clip, byte[]>.Builder sounds = ImmutableDictionary.CreateBuilder<Clip, byte[]>();
        foreach (
            IGrouping<(string Sha256, int Channel), Clip> file in pool
                .Segments.SelectMany(segment => segment.All)
                .GroupBy(clip => (clip.Sha256, clip.Channel))
        )
        {
            Clip[] clips = [.. file];
            ImmutableArray<byte[]> cut = ClipSound.Cut(
                found[file.Key.Sha256],
                file.Key.Channel,
                [.. clips.Select(clip => new TimeWindow(clip.FromS, clip.FromS + clip.Seconds))]
            );
            sounds.AddRange(clips.Zip(cut, (clip, sound) => KeyValuePair.Create(clip, sound)));
        }

        return sounds.ToImmutable();
    }
}

/// <summary>The words behind 'play'.</summary>
/// <param name="Study">The study file.</param>
/// <param name="Files">The recordings, or folders that hold them.</param>
/// <param name="Player">Command line of the player.</param>
/// <param name="People">Who chooses, in turn.</param>
/// <param name="Set">Number of the set; null: the first that is open.</param>
internal sealed record TypedPlaying(string Study, IReadOnlyList<string> Files, string Player, IReadOnlyList<string> People, int? Set);
