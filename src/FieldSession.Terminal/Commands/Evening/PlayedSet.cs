using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Rating;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// A set that is played from recordings: each trial is drawn, played, answered by place and stored. Nothing on the screen tells a code.
/// </summary>
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
    private string Typed(bool isHeard, Surroundings outside) =>
        outside.Ask(isHeard ? PlayWords.WhichOne(Now.Terms) : PlayWords.EnterPlays)?.Trim().ToLowerInvariant() ?? Stop;

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

/// <summary>What the command 'play' says: never a code at a place, never a run.</summary>
internal static class PlayWords
{
    public const string NoSetFromRecordings = "no trials from recordings are planned";

    public static string PlanOne(ExampleNames own) =>
        $"type 'trials {own.Code} {own.Other} n=20 seg=3 from=recordings which is louder' in 'fieldsession enter'";

    public const string PlanAnother = "plan another set before the reveal; it is counted apart";
    public const string TooFewFound = "too few recordings are left to play; name the files or their folder again";
    public const string CantBeRead = "a file or folder can't be read; name the recordings or their folder again";
    public const string SetVolume = "v plays one clip by lot, to set the volume; then leave it alone";
    public const string EnterPlays = "Enter plays the trial (v volume, q stop) > ";
    public const string AtItsEnd = "the set is complete; 'fieldsession review' shows what was chosen";

    public static string SetIsAtItsEnd(ChoiceSet set) => $"all {set.Presentations.Count} trials of set {set.Number} are made";

    public static string NotFound(IEnumerable<int> runs) => $"recordings not found: run {string.Join(", ", runs)}";

    public static string Head(ChoiceSet set, ClipPool pool) =>
        string.Create(
            CultureInfo.CurrentCulture,
            $"set {set.Number}, '{set.Terms.Question}', {set.Presentations.Count} trials; clips of "
                + $"{pool.Segments.Min(segment => segment.All.First().Seconds):0.0} s"
        );

    public static string Trial(ChoiceSet set, string person) => $"trial {set.NextTrial} of {set.Presentations.Count}, {person} alone";

    public static string WhichOne(ChoiceTerms terms) =>
        terms.Kind == ChoiceKind.Triangle
            ? "which is the odd one: 1, 2 or 3 (r again, q stop) > "
            : $"{terms.Question}: 1 or 2 (r again, q stop) > ";

    public static string OpenAtTheReveal(ChoiceSet set) =>
        $"look out: set {set.Number} is not heard to its end; once the key is open it never can be; stop here and run 'fieldsession play'";

    public static string Stopped(ChoiceSet set) => $"stopped before trial {set.NextTrial}; the same command goes on";

    public static string PlayerFailed(int? exitCode) =>
        exitCode is { } code
            ? $"the player ended with {code}, nothing is stored; give another --player"
            : "the player can't be started; give another --player";

    public static string PlayerWasQuick(double took, double seconds) =>
        string.Create(
            CultureInfo.CurrentCulture,
            $"! the player ended after {took:0.0} s of {seconds:0.0} s; give one that plays to the end"
        );
}
