using System.Collections.Immutable;
using FieldSession.Rating;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>A set that is played from recordings: each trial is drawn, played, answered by place and stored. Nothing on the screen tells a code.</summary>
/// <param name="Logbook">The study's one door.</param>
/// <param name="Set">Number of the set.</param>
/// <param name="Pool">What can be played.</param>
/// <param name="Sounds">The clips as WAV files.</param>
internal sealed record PlayedSet(Logbook Logbook, int Set, ClipPool Pool, ImmutableDictionary<Clip, byte[]> Sounds)
{
    private const string Again = "r";
    private const string Stop = "q";
    private const string Volume = "v";

    // 128 and the number of SIGINT: Ctrl+C reaches the player as well as us
    private const int Interrupted = 130;

    private static string[] Places => ["first", "second", "third"];

    private ChoiceSet Now => Logbook.Study.ChoiceSets[Set - 1];

    /// <summary>Plays until the set is at its end or somebody stops.</summary>
    /// <param name="player">Plays the clips.</param>
    /// <param name="people">Who chooses, in turn.</param>
    /// <param name="outside">The world outside.</param>
    /// <returns>An exit code.</returns>
    public int Run(ClipPlayer player, IReadOnlyList<string> people, Surroundings outside)
    {
        outside.Output.WriteLine(PlayWords.Head(Now, Pool));
        outside.Output.WriteLine(PlayWords.SetVolume);
        int code = ExitCode.Done;
        while (!Now.IsComplete && code == ExitCode.Done)
        {
            string person = people[Now.Choices.Count % people.Count];
            outside.Output.WriteLine(PlayWords.Trial(Now, person));
            DrawnTrial drawn = DrawnTrial.Of(Pool, Now.Terms, outside.Lot);
            if (Asked(drawn, player, outside, out code) is not { } place)
            {
                outside.Output.WriteLine(PlayWords.Stopped(Now));
                return code;
            }

            code = Answer.To(Logbook.Write(new ChoiceMade(person, Set, Now.NextTrial, place, Clips: drawn.Heard)), outside);
        }

        if (Now.IsComplete)
        {
            outside.Output.WriteLine(PlayWords.AtItsEnd);
        }

        return code;
    }

    // null: somebody stopped, or nothing can be played
    private int? Asked(DrawnTrial drawn, ClipPlayer player, Surroundings outside, out int code)
    {
        byte[][] trial = [.. drawn.Clips.Select(clip => Sounds[clip])];
        bool isHeard = false;
        code = ExitCode.Done;
        while (code == ExitCode.Done)
        {
            string typed = Typed(isHeard, outside);
            if (typed == Stop || (isHeard && PlaceIn(typed) is not null))
            {
                return PlaceIn(typed);
            }

            if (typed == Volume)
            {
                code = Play([Sounds.Values.ElementAt(outside.Lot.Below(Sounds.Count))], player, outside);
            }
            else if (!isHeard || typed == Again)
            {
                code = Play(trial, player, outside);
                isHeard = true;
            }
        }

        return null;
    }

    // input that has ended stops as well
    private string Typed(bool isHeard, Surroundings outside) => outside.Ask(isHeard ? PlayWords.WhichOne(Now.Terms) : PlayWords.EnterPlays)?.Trim().ToLowerInvariant() ?? Stop;

    private int? PlaceIn(string typed)
    {
        int place = Journal.Typed.Count(typed) ?? Array.IndexOf(Places, typed) + 1;
        return place >= 1 && place <= Now.Terms.Places ? place : null;
    }

    private int Play(IEnumerable<byte[]> sounds, ClipPlayer player, Surroundings outside)
    {
        double seconds = Pool.Segments.Min(segment => segment.All.First().Seconds);
        foreach (byte[] sound in sounds)
        {
            PlayerEnd? end = player.Play(sound);
            if (end is not { ExitCode: 0 } played)
            {
                if (end?.ExitCode != Interrupted)
                {
                    outside.Error.WriteLine(PlayWords.PlayerFailed(end?.ExitCode));
                }

                return ExitCode.Wrong;
            }

            if (played.Took.TotalSeconds < seconds / 2)
            {
                outside.Error.WriteLine(PlayWords.PlayerWasQuick(played.Took.TotalSeconds, seconds));
            }
        }

        return ExitCode.Done;
    }
}
