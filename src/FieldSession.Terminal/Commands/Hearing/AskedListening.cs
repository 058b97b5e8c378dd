using System.Collections.Immutable;
using FieldSession.Aligning;
using FieldSession.Journal;
using FieldSession.Listening;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'listen'.</summary>
/// <param name="Study">The study file.</param>
/// <param name="Files">The recordings.</param>
internal sealed record AskedListening(string Study, ImmutableArray<string> Files)
{
    /// <summary>The chain.</summary>
    public string Chain { get; private init; } = RunRecording.UsualChain;

    /// <summary>The channel, from 1.</summary>
    public int Channel { get; private init; } = 1;

    /// <summary>What the calibrator makes, dB; null: as the plan says.</summary>
    public double? ToneDb { get; private init; }

    /// <summary>The gain of the chain, dB; null: not given.</summary>
    public double? GainDb { get; private init; }

    /// <summary>What somebody says about the clocks.</summary>
    public ListeningTerms Terms { get; private init; } = new();

    /// <summary>Whether it takes the place of another recording of the same run.</summary>
    public bool Again { get; private init; }

    /// <summary>Whether not even the highest level is kept.</summary>
    public bool IsSparse { get; private init; }

    /// <summary>JSON instead of text.</summary>
    public bool Json { get; private init; }

    /// <summary>Reads what was typed; where something is wrong, nothing comes back and the objections say what.</summary>
    public static AskedListening? Read(TypedListening typed, TimeZoneInfo zone, List<string> objections)
    {
        ListeningTerms terms = new(
            TypedTimes.Zone(typed.Clock.Zone, objections),
            Number("--offset", typed.Clock.Offset, -1e6, 1e6, objections),
            TypedTimes.Local("--begun", typed.Clock.Begun, zone, objections),
            (int?)Number("--run", typed.Clock.Run, 1, 1000, objections),
            TrustOf(typed.Clock.Clock, objections)
        );
        AskedListening asked = new(typed.Study, [.. typed.Files])
        {
            Chain = typed.Chain ?? RunRecording.UsualChain,
            Channel = (int)(Number("--channel", typed.Channel, 1, 1000, objections) ?? 1),
            ToneDb = Number("--tone", typed.Tone, 40, 160, objections),
            GainDb = Number("--gain", typed.Gain, -200, 300, objections),
            Terms = terms,
            Again = typed.Again,
            IsSparse = typed.Grid == "none",
            Json = typed.Json,
        };
        if (!ListeningText.IsName(asked.Chain))
        {
            objections.Add(ListenWords.ChainIsOneWord);
        }

        if (typed.Grid is not (null or "none" or "segment"))
        {
            objections.Add(ListenWords.GridIs);
        }

        if (asked.Files.Length > 1 && (terms.BegunAt is not null || terms.Run is not null))
        {
            objections.Add(ListenWords.OneFileOnly);
        }

        return objections.Count == 0 ? asked : null;
    }

    private static double? Number(string option, string? text, double least, double most, List<string> objections)
    {
        double? number = text is null ? null : Typed.Number(text);
        if (text is not null && !(number >= least && number <= most))
        {
            objections.Add(ListenWords.NumberIs(option, text, least, most));
            return null;
        }

        return number;
    }

    private static ClockSource? TrustOf(string? text, List<string> objections)
    {
        if (text is not (null or "marks" or "file"))
        {
            objections.Add(ListenWords.ClockIs(text));
        }

        return text switch
        {
            "marks" => ClockSource.Marks,
            "file" => ClockSource.FileTime,
            _ => null,
        };
    }
}

/// <summary>The words behind 'listen' as they were typed; null: not given.</summary>
/// <param name="Study">The study file.</param>
/// <param name="Files">The recordings.</param>
/// <param name="Chain">The chain.</param>
/// <param name="Channel">The channel.</param>
/// <param name="Tone">What the calibrator makes.</param>
/// <param name="Gain">The gain of the chain.</param>
/// <param name="Clock">What is said about the clocks.</param>
/// <param name="Again">Whether it takes the place of another recording.</param>
/// <param name="Grid">How much is kept.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record TypedListening(
    string Study,
    IReadOnlyList<string> Files,
    string? Chain,
    string? Channel,
    string? Tone,
    string? Gain,
    TypedClock Clock,
    bool Again,
    string? Grid,
    bool Json
);

/// <summary>What was typed about the clocks; null: not given.</summary>
/// <param name="Zone">Zone of the recorder's clock.</param>
/// <param name="Offset">By how much it was ahead.</param>
/// <param name="Begun">When the recording began.</param>
/// <param name="Clock">Which clock is right.</param>
/// <param name="Run">The run it is of.</param>
internal sealed record TypedClock(string? Zone, string? Offset, string? Begun, string? Clock, string? Run);
