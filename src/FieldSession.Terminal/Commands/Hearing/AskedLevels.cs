using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Signals;
using FieldSession.Store.Recordings;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'levels'.</summary>
/// <param name="File">The recording; '-': what is piped in.</param>
internal sealed record AskedLevels(string File)
{
    /// <summary>What is typed for standard input.</summary>
    public const string Piped = "-";

    /// <summary>The gain of the chain, dB; null: not given.</summary>
    public double? GainDb { get; private init; }

    /// <summary>What the calibrator makes, dB; null: not given.</summary>
    public double? ToneDb { get; private init; }

    /// <summary>A recording of the tone afterwards; null: none.</summary>
    public string? After { get; private init; }

    /// <summary>Windows to be measured; the whole recording where none was given.</summary>
    public ImmutableArray<TimeWindow> Windows { get; private init; } = [new(0, double.PositiveInfinity)];

    /// <summary>A list of impacts; null: none.</summary>
    public string? Impacts { get; private init; }

    /// <summary>The channel, from 1.</summary>
    public int Channel { get; private init; } = 1;

    /// <summary>How samples without a header are written; null: the recording says it.</summary>
    public SoundFormat? Raw { get; private init; }

    /// <summary>JSON instead of text.</summary>
    public bool Json { get; private init; }

    /// <summary>Reads what was typed; where something is wrong, nothing comes back and the objections say what.</summary>
    public static AskedLevels? Read(TypedLevels typed, List<string> objections)
    {
        AskedLevels asked = new(typed.File)
        {
            GainDb = Number(typed.Gain, -200, 300, text => LevelsWords.GainIsANumber(text), objections),
            ToneDb = Number(typed.Tone, 40, 160, text => LevelsWords.ToneIsANumber(text), objections),
            After = typed.After,
            Impacts = typed.Impacts,
            Channel = (int)(Number(typed.Channel, 1, 1000, text => LevelsWords.ChannelIsANumber(text), objections) ?? 1),
            Raw = typed.Raw is { } raw ? RawFormat(raw, objections) : null,
            Json = typed.Json,
            Windows =
                typed.Windows.Count == 0 ? [new(0, double.PositiveInfinity)] : [.. typed.Windows.Select(text => Window(text, objections))],
        };
        if (typed is { Gain: not null, Tone: not null })
        {
            objections.Add(LevelsWords.GainOrTone);
        }

        if (typed is { After: not null, Tone: null })
        {
            objections.Add(LevelsWords.AfterNeedsTone);
        }

        return objections.Count == 0 ? asked : null;
    }

    private static double? Number(string? text, double least, double most, Func<string, string> objection, List<string> objections)
    {
        if (text is null)
        {
            return null;
        }

        double? number = Typed.Number(text);
        if (number >= least && number <= most)
        {
            return number;
        }

        objections.Add(objection(text));
        return null;
    }

    private static TimeWindow Window(string text, List<string> objections)
    {
        string[] ends = text.Split('-');
        if (ends.Length == 2 && Typed.Number(ends[0]) is { } from && Typed.Number(ends[1]) is { } to && to > from)
        {
            return new(from, to);
        }

        objections.Add(LevelsWords.WindowIsFromTo(text));
        return default;
    }

    // RATE,BITS,CHANNELS; f32 and f64 are floating point
    private static SoundFormat? RawFormat(string text, List<string> objections)
    {
        string[] parts = text.Split(',');
        if (parts.Length == 3 && Typed.Count(parts[0]) is { } rate && Typed.Count(parts[2]) is { } channels and <= 64)
        {
            bool isFloat = parts[1].StartsWith('f');
            int? bits = Typed.Count(parts[1].TrimStart('f'));
            if (isFloat ? bits is 32 or 64 : bits is 16 or 24 or 32)
            {
                return new(rate, bits.Value, channels, isFloat);
            }
        }

        objections.Add(LevelsWords.RawIsRateBitsChannels(text));
        return null;
    }
}

/// <summary>The words behind 'levels' as they were typed; null: not given.</summary>
/// <param name="File">The recording.</param>
/// <param name="Gain">The gain of the chain, dB.</param>
/// <param name="Tone">What the calibrator makes, dB.</param>
/// <param name="After">A recording of the tone afterwards.</param>
/// <param name="Windows">Windows, FROM-TO in seconds.</param>
/// <param name="Impacts">A list of impacts.</param>
/// <param name="Channel">The channel, from 1.</param>
/// <param name="Raw">RATE,BITS,CHANNELS of samples without a header.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record TypedLevels(
    string File,
    string? Gain,
    string? Tone,
    string? After,
    IReadOnlyList<string> Windows,
    string? Impacts,
    string? Channel,
    string? Raw,
    bool Json
);
