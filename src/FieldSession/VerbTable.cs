using System.Collections.Immutable;
using FieldSession.Checking;
using FieldSession.Driving;
using FieldSession.EnergyDriving;
using FieldSession.Flagging;
using FieldSession.Journal;
using FieldSession.Listening;
using FieldSession.Measures;
using FieldSession.Merging;
using FieldSession.Planning;
using FieldSession.Predicting;
using FieldSession.Rating;
using FieldSession.State;

namespace FieldSession;

/// <summary>When a word is of use.</summary>
[Flags]
public enum VerbTimes
{
    /// <summary>While a run is on.</summary>
    Road = 1,

    /// <summary>At a stop, while the data are open.</summary>
    Stop = 2,

    /// <summary>In the evening.</summary>
    Evening = 4,
}

/// <summary>A word that begins an entry line.</summary>
/// <param name="Word">The word.</param>
/// <param name="Example">A whole line that begins with it.</param>
/// <param name="Does">What the line does.</param>
/// <param name="Times">When it is of use.</param>
/// <param name="Read">What a line that begins with the word means.</param>
public sealed record Verb(string Word, string Example, string Does, VerbTimes Times, Func<string, Study, Parsed?> Read)
{
    /// <summary>The example with people, codes and units of a study; null: it names none.</summary>
    public Func<ExampleNames, string>? OwnExample { get; init; }

    /// <summary>A whole line that can be typed in the study as it is.</summary>
    public string ExampleIn(Study study) => OwnExample?.Invoke(ExampleNames.In(study)) ?? Example;

    /// <summary>What Tab puts into the box; the word and a blank where nothing else is said.</summary>
    public string Begun { get; init; } = $"{Word} ";
}

/// <summary>
/// Contents page 2: every word that begins an entry line. The grammar, Tab, the words that a stop takes without a colon, the help and
/// docs/words.md are all made from it.
/// </summary>
public static class VerbTable
{
    /// <summary>Every word, in the order of the day.</summary>
    public static ImmutableArray<Verb> All { get; } =
    [
        new(
            "calibration",
            "calibration before 94.0",
            "the meter on the calibrator, before the first run and after the last",
            VerbTimes.Stop,
            CalibrationText.Parse
        ),
        new(
            "weather",
            "weather air=6.1 road=5 wind=2.5 gust=4 surface=dry",
            "the conditions; any part can be left out",
            VerbTimes.Road | VerbTimes.Stop,
            (text, study) => WeatherText.Parse(text, Units(study))
        )
        {
            OwnExample = own => CheckingWords.WeatherExample(own.Units),
        },
        new(
            "check",
            "check pressure 230 231 250 249 at=12",
            "a check made with values: pressure, tyres, mass and others",
            VerbTimes.Stop,
            (text, study) => CheckText.Parse(text, Units(study))
        )
        {
            OwnExample = own => new PressureCheck().FormIn(own.Units),
        },
        new(
            "override",
            "override calibration-before calibrator left at home",
            "goes on although a check blocks it, and why",
            VerbTimes.Stop,
            (text, _) => OverrideText.Parse(text)
        ),
        new("run", "run 417", "starts the next run; driver=NAME and car=NAME may follow", VerbTimes.Stop, RunText.Parse)
        {
            OwnExample = own => $"run {own.Other}",
        },
        new("seg", "seg 5", "the next reading is on segment 5", VerbTimes.Road, MoveText.Parse),
        new(
            "end",
            "end puncture",
            "ends the run before its last segment; say why at the stop",
            VerbTimes.Road | VerbTimes.Stop,
            RunText.Parse
        )
        {
            Begun = "end",
        },
        new("abort", "abort puncture", "the same as end", VerbTimes.Road | VerbTimes.Stop, RunText.Parse) { Begun = "abort" },
        new(
            "flag",
            "flag 2.5 t lorry",
            "flags the reading of run 2 on segment 5; the causes are t w s r n e",
            VerbTimes.Road | VerbTimes.Stop | VerbTimes.Evening,
            FlagText.Parse
        ),
        new("confirm", "confirm 2.5", "the doubtful reading of run 2 on segment 5 is right as typed", VerbTimes.Stop, StopText.Parse),
        new("correct", "correct 2.5 58-60", "run 2 read 58-60 on segment 5", VerbTimes.Stop, StopText.Parse),
        new("fill", "fill 2.5 58-60", "run 2 read 58-60 on segment 5, where nothing was stored", VerbTimes.Stop, StopText.Parse),
        new(
            "note",
            "note 2.5 lorry ahead",
            "a note on segment 5 of run 2",
            VerbTimes.Road | VerbTimes.Stop | VerbTimes.Evening,
            (text, study) => NoteText.Parse(text, study.Plan)
        ),
        new(
            "shift",
            "shift 2.5 +1",
            "moves run 2 by one segment, from segment 5 up to the next gap; 2.5-7 up to segment 7",
            VerbTimes.Stop,
            StopText.Parse
        ),
        new(
            "extra",
            "extra c=74.2 l200=60.1 rec=take12",
            "more about the last reading: dB(C), bands, a recording",
            VerbTimes.Road | VerbTimes.Stop,
            (text, _) => ExtraText.Parse(text)
        ),
        new("rate", "rate Tam roar 6.25", "a score of one person for one attribute, after a run", VerbTimes.Stop, RatingText.Parse)
        {
            OwnExample = own => $"rate {own.Person} {own.Attribute} 6.25",
        },
        new("ratings", "ratings closed", "nobody will rate the last run any more", VerbTimes.Stop, RatingText.Parse)
        {
            Begun = "ratings closed",
        },
        new("trials", "trials 862 417 n=10", "plans forced choices between two codes", VerbTimes.Stop, TrialsText.Parse)
        {
            OwnExample = own => $"trials {own.Code} {own.Other} n=10",
        },
        new("slip", "slip Ilse", "who runs the trials and alone is shown their order", VerbTimes.Stop, SlipText.Parse),
        new("choose", "choose Tam first unseen", "the place that one person chose in the next trial", VerbTimes.Stop, ChoiceText.Parse)
        {
            OwnExample = own => $"choose {own.Person} first unseen",
        },
        new("choice", "choice Tam second", "the same as choose", VerbTimes.Stop, ChoiceText.Parse)
        {
            OwnExample = own => $"choice {own.Person} second",
        },
        new(
            "mark",
            "mark",
            "three knocks for the recorder, and this line at the third",
            VerbTimes.Road | VerbTimes.Stop,
            (text, _) => ListeningText.Parse(text)
        )
        {
            Begun = "mark",
        },
        new(
            "chain",
            "chain recorder at=headrest gain=3",
            "what recordings are made with: recorder, microphone, place, gain",
            VerbTimes.Stop,
            (text, _) => ListeningText.Parse(text)
        ),
        new(
            "ring",
            "ring open because the owner asks",
            "uncovers the ring before the predictions, and why",
            VerbTimes.Stop,
            (text, _) => ListeningText.Parse(text)
        )
        {
            Begun = "ring open because ",
        },
        new(
            "rerun",
            "rerun bracket 2 rain set in",
            "drives a whole bracket again, and why",
            VerbTimes.Stop,
            (text, _) => RerunText.Parse(text)
        ),
        new("leg", "leg 3 w gusts", "flags a leg of an energy day; 'leg day=1 ...' types one", VerbTimes.Stop, LegText.Parse),
        new("amend", "amend margin_db=1.5 because the owner asks", "changes a part of the plan, and why", VerbTimes.Stop, AmendText.Parse),
        new(
            "settle",
            "settle 1 first because the other was a try",
            "which side of a conflict between two laptops counts",
            VerbTimes.Stop | VerbTimes.Evening,
            SettleText.Parse
        ),
        new(
            "predict",
            "predict Tam feature=862 sure=3",
            "locks a prediction; the data are frozen from then on",
            VerbTimes.Evening,
            PredictionText.Parse
        )
        {
            OwnExample = own => $"predict {own.Person} feature={own.Code} sure=3",
        },
    ];

    /// <summary>The row of a word, letter case apart; null: no line begins with it.</summary>
    public static Verb? Of(string word) => All.FirstOrDefault(verb => Typed.Is(word, verb.Word));

    /// <summary>The word that was probably meant; null: none is near.</summary>
    public static Verb? Near(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return NearWord.Of(word.ToLowerInvariant(), All.Select(verb => verb.Word)) is { } near ? Of(near) : null;
    }

    /// <summary>The words that are of use in the study as it is.</summary>
    public static IEnumerable<Verb> UsableIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        VerbTimes now =
            study.DataFrozen ? VerbTimes.Evening
            : study.RunOn is not null ? VerbTimes.Road
            : VerbTimes.Stop;
        return All.Where(verb => verb.Times.HasFlag(now));
    }

    private static UnitSystem Units(Study study) => study.Plan?.Units ?? UnitSystem.Metric;
}
