using FieldSession.Rating;
using FieldSession.State;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Listening;

/// <summary>
/// Listening at home: planned trials are played from recordings between the last prediction and the reveal, and nothing tells which clip is
/// which code.
/// </summary>
public sealed class TrialsFromRecordingsTests
{
    private const string SixTrials = "n=6 seg=2 from=recordings which rings more";

    [Fact]
    public void Two_people_choose_by_place_in_turn_and_the_set_is_counted_like_any_other()
    {
        using ADayWithRecorder day = Recorded(4);
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Locked(day);

        string said = day.Prompt.Must(0, Play(day), string.Concat(Enumerable.Repeat("\n1\n", 6)));

        ChoiceSet set = Assert.Single(day.Study.ChoiceSets);
        Assert.Equal(["Ro", "Tam", "Ro", "Tam", "Ro", "Tam"], set.Choices.Select(choice => choice.Person));
        Assert.All(set.Choices, choice => Assert.Equal((1, ChoiceSight.Unseen), (choice.Place, choice.Sight)));
        Assert.All(set.Choices, choice => Assert.Equal(choice.Clips!.Order, set.Presentations[choice.Trial - 1]));
        Assert.All(
            set.Choices,
            choice =>
                Assert.Equal(
                    Enumerable.Range(1, 2).Select(place => set.CodeAt(choice.Trial, place)),
                    choice.Clips!.Runs.Select(run => day.Study.Runs[run - 1].Code)
                )
        );
        Assert.Contains("the set is complete", said, StringComparison.Ordinal);
        Assert.Contains(
            "'which rings more', Lane 2, from recordings",
            day.Prompt.Must(0, ["review", day.Prompt.Study]),
            StringComparison.Ordinal
        );
        day.Prompt.Must(0, ["verify", day.Prompt.Study]);
        day.Prompt.Must(0, ["export", day.Prompt.Study, "--out", day.Prompt.Here("tables")]);
        Assert.Contains(",true,2,", File.ReadAllText(day.Prompt.Here("tables/choices.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_clips_are_the_recordings_own_sound_alike_long_and_neither_they_nor_the_screen_tell_a_code_or_a_run()
    {
        using ADayWithRecorder day = Recorded(4);
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Locked(day);

        string said = day.Prompt.Must(0, Play(day), "v\n" + string.Concat(Enumerable.Repeat("\nr\n2\n", 6)));

        string[] clips = Directory.GetFiles(day.Prompt.Here("played"));
        Assert.Equal(1 + (6 * 2 * 2), clips.Length);
        Assert.Single(clips.Select(clip => new FileInfo(clip).Length).Distinct());
        Assert.All(clips, clip => Assert.Matches("^[0-9a-f]{12}\\.wav$", Path.GetFileName(clip)));
        Assert.False(Directory.Exists(day.Prompt.Here("clips")));
        Assert.DoesNotContain("run ", said, StringComparison.Ordinal);
        Assert.All(day.Study.Codes, code => Assert.DoesNotContain(code.Digits, said, StringComparison.Ordinal));
        HeardSegment heard = day.Study.Recordings[0].Segments[1];
        byte[] whole = File.ReadAllBytes(day.Files[0]);
        int middle = (int)((heard.FromS + (heard.Seconds / 2)) * 16_000);
        Assert.Contains(
            clips.Select(File.ReadAllBytes),
            clip =>
                clip[44..].Length / 3 / 2 is var half
                && Enumerable.Range(0, 1000).All(i => Math.Abs(Sample24(clip, half + i) - Sample16(whole, middle + i)) < 2.0 / 32768)
        );
    }

    [Fact]
    public void Nothing_is_played_before_the_last_prediction_or_after_the_reveal_and_nobody_is_told_an_order()
    {
        using ADayWithRecorder day = Recorded(2);
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Assert.Contains("still open: Ro, Tam", day.Prompt.Must(1, Play(day), "\n1\n"), StringComparison.Ordinal);
        Assert.Contains(
            "its order is drawn clip by clip",
            day.Prompt.Must(1, ["slip", day.Prompt.Study, "--for", "Ilse"]),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "'fieldsession play' plays it",
            day.Prompt.Must(1, ["enter", day.Prompt.Study], "choose Ro first\n"),
            StringComparison.Ordinal
        );
        day.Prompt.Enter($"calibration after 94.0\npredict Ro feature={day.Study.Codes.First()} sure=4\n");
        Assert.Contains(
            "still open: Tam; lock it with 'fieldsession predict'",
            day.Prompt.Must(1, Play(day), "\n1\n"),
            StringComparison.Ordinal
        );
        Assert.Empty(day.Study.ChoiceSets[0].Choices);
        Assert.All(day.Study.ChoiceSets[0].Presentations, order => Assert.Equal("", order));
    }

    [Fact]
    public void A_set_can_be_planned_after_the_last_prediction_where_recordings_are_there_to_play_it()
    {
        using ADayWithRecorder day = Recorded(2);
        Locked(day);
        Assert.Contains(
            "fewer than 2 clean runs on",
            day.Prompt.Must(1, ["enter", day.Prompt.Study], $"{Trials(day, "n=12 kind=triangle from=recordings")}\n"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "predictions are locked",
            day.Prompt.Must(1, ["enter", day.Prompt.Study], $"{Trials(day, "n=12 which is louder")}\n"),
            StringComparison.Ordinal
        );
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Assert.True(Assert.Single(day.Study.ChoiceSets).IsFromRecordings);
        day.Prompt.Must(0, ["verify", day.Prompt.Study]);
        Assert.Contains("set 1 is not heard to its end", day.Prompt.Must(0, day.Prompt.RevealWords("a.key")), StringComparison.Ordinal);
        Assert.Contains(
            "the key is open, so nobody can choose blind any more",
            day.Prompt.Must(1, Play(day), "\n1\n"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_stopped_set_goes_on_where_it_was_and_until_its_end_nobody_reads_what_was_chosen()
    {
        using ADayWithRecorder day = Recorded(4);
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Locked(day);
        Assert.Contains("stopped before trial 3", day.Prompt.Must(0, Play(day), "\n1\n\n2\nq\n"), StringComparison.Ordinal);
        Assert.Contains(
            "2 of 6 trials made, covered until the planned end",
            day.Prompt.Must(0, ["review", day.Prompt.Study]),
            StringComparison.Ordinal
        );
        day.Prompt.Run(["export", day.Prompt.Study, "--out", day.Prompt.Here("tables")]);
        Assert.False(File.Exists(day.Prompt.Here("tables/journal.jsonl")));
        Assert.Contains("trial 3 of 6, Ro alone", day.Prompt.Must(0, Play(day), "\n1\n\n1\n\n1\n\n1\n"), StringComparison.Ordinal);
        Assert.True(day.Study.ChoiceSets[0].IsComplete);
        Assert.Contains("all 6 trials of set 1 are made", day.Prompt.Must(1, Play(day)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_player_that_fails_stores_nothing_and_what_a_crash_left_is_gone_before_the_next_clip()
    {
        using ADayWithRecorder day = Recorded(2);
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Locked(day);
        day.Prompt.Write("clips/left.wav", "left by a crash");
        Assert.Contains(
            "the player ended with 1, nothing is stored",
            day.Prompt.Must(2, Play(day, "false"), "\n1\n"),
            StringComparison.Ordinal
        );
        Assert.Empty(day.Study.ChoiceSets[0].Choices);
        Assert.False(Directory.Exists(day.Prompt.Here("clips")));
    }

    [Fact]
    public void Ctrl_C_while_a_clip_plays_is_a_stop_and_no_fault_of_the_player()
    {
        using ADayWithRecorder day = Recorded(2);
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Locked(day);
        string said = day.Prompt.Must(2, Play(day, "exit 130 #"), "\n1\n");
        Assert.Contains("stopped before trial 1", said, StringComparison.Ordinal);
        Assert.DoesNotContain("the player ended", said, StringComparison.Ordinal);
        Assert.Empty(day.Study.ChoiceSets[0].Choices);
    }

    [Fact]
    public void Recordings_are_known_by_their_content_wherever_they_lie_now_and_those_that_are_lost_are_told_by_their_run()
    {
        using ADayWithRecorder day = Recorded(4);
        day.Prompt.Enter($"{Trials(day, SixTrials)}\n");
        Locked(day);
        day.Prompt.Write("moved/notes.txt", "no sound");
        foreach ((int index, string file) in day.Files.Take(3).Index())
        {
            File.Move(file, day.Prompt.Here($"moved/take{index}.WAV"));
        }

        string[] moved = ["play", day.Prompt.Study, day.Prompt.Here("moved"), "--player", "true", "--for", "Ro"];
        Assert.Contains("recordings not found: run 4", day.Prompt.Must(0, moved, "\n1\nq\n"), StringComparison.Ordinal);
        File.Delete(day.Prompt.Here("moved/take1.WAV"));
        Assert.Contains("too few recordings are left to play", day.Prompt.Must(1, moved, "\n1\n"), StringComparison.Ordinal);
        Assert.Contains(
            "can't be read; name the recordings",
            day.Prompt.Must(2, ["play", day.Prompt.Study, day.Prompt.Here("nowhere"), "--player", "true", "--for", "Ro"]),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(ChoiceKind.Paired, 2)]
    [InlineData(ChoiceKind.Triangle, 3)]
    public void Whoever_always_says_the_same_place_is_right_by_chance_alone_and_no_trial_holds_one_run_twice(ChoiceKind kind, int places)
    {
        const int Draws = 6000;
        ChoiceTerms terms = new(kind, new SpecCode("417"), new SpecCode("862"), "x", null, null, 0.75);
        SegmentClips Segment(int number) => new(number, [ClipOf(1), ClipOf(4), ClipOf(5)], [ClipOf(2), ClipOf(3)]);
        SeededLot lot = new(11);
        DrawnTrial[] trials =
        [
            .. Enumerable.Range(0, Draws).Select(_ => DrawnTrial.Of(new ClipPool([Segment(1), Segment(2)], null), terms, lot)),
        ];
        ChoiceSet set = new(1, terms, [.. trials.Select(trial => trial.Heard.Order)], default);
        int right = Enumerable.Range(1, Draws).Count(trial => places == 3 ? set.IsOdd(trial, 1) : set.CodeAt(trial, 1) == terms.First);

        // five standard deviations of the binomial
        Assert.Equal((double)Draws / places, right, 5 * Math.Sqrt(Draws * (1.0 / places) * (1 - (1.0 / places))));
        Assert.All(trials, trial => Assert.Equal(places, trial.Heard.Runs.Distinct().Count()));
        Assert.Equal([1, 2], trials.Select(trial => trial.Heard.Segment).Distinct().Order());
    }

    [Fact]
    public void Windows_that_clipped_or_hold_voices_or_were_spoilt_are_never_played()
    {
        using ADayWithRecorder day = Recorded(2);
        Study study = day.Study;
        ChoiceTerms terms = new(ChoiceKind.Paired, study.Codes.First(), study.Codes.Last(), "x", 2, null, 0.75);
        Assert.Null(ClipPool.Of(study, terms).Objection);
        RunRecording clipped = study.Recordings[0] with
        {
            Segments = [.. study.Recordings[0].Segments.Select(heard => heard with { Clips = 1 })],
        };
        RunRecording voices = study.Recordings[0] with
        {
            Segments = [.. study.Recordings[0].Segments.Select(heard => heard with { HasSpeech = true })],
        };
        Assert.All(
            [clipped, voices],
            bad => Assert.NotNull(ClipPool.Of(study with { Recordings = [bad, study.Recordings[1]] }, terms).Objection)
        );
        day.Prompt.Enter("flag 1.2 t lorry\n");
        Assert.NotNull(ClipPool.Of(day.Study, terms).Objection);
        Assert.Contains(
            "different chains",
            ClipPool
                .Of(study with { Recordings = [study.Recordings[0] with { Chain = "phone" }, study.Recordings[1]] }, terms)
                .Objection!.Why,
            StringComparison.Ordinal
        );
    }

    private static Clip ClipOf(int run) => new(run, new string((char)('a' + run), 64), 1, 10, 5);

    private static ADayWithRecorder Recorded(int runs)
    {
        ADayWithRecorder day = new();
        for (int run = 0; run < runs; run++)
        {
            day.Drive();
        }

        day.Listen();
        return day;
    }

    private static string Trials(ADayWithRecorder day, string rest) => $"trials {day.Study.Codes.First()} {day.Study.Codes.Last()} {rest}";

    private static void Locked(ADayWithRecorder day) =>
        day.Prompt.Enter(
            $"calibration after 94.0\npredict Ro feature={day.Study.Codes.First()} sure=4\npredict Tam "
                + $"feature={day.Study.Codes.First()} sure=4\n"
        );

    private static string[] Play(ADayWithRecorder day, string? player = null)
    {
        Directory.CreateDirectory(day.Prompt.Here("played"));
        return
        [
            "play",
            day.Prompt.Study,
            .. day.Files,
            "--player",
            player ?? $"cp -t '{day.Prompt.Here("played")}'",
            "--for",
            "Ro",
            "--for",
            "Tam",
        ];
    }

    private static double Sample24(byte[] clip, int at) =>
        ((clip[44 + (3 * at)] << 8) | (clip[45 + (3 * at)] << 16) | (clip[46 + (3 * at)] << 24)) / (double)int.MaxValue;

    private static double Sample16(byte[] wav, int at) => BitConverter.ToInt16(wav, 44 + (2 * at)) / 32768.0;
}
