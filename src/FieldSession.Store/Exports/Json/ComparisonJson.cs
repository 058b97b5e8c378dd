using System.Text;
using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.Reporting;

namespace FieldSession.Store.Exports;

/// <summary>
/// The comparison as JSON for other programs; the names are fixed (docs/files.md), further ones are at the end of an object. 'd' is code
/// minus reference in dB: positive means louder. Unknown is null; a class without a segment on the route is null.
/// </summary>
public static class ComparisonJson
{
    /// <summary>Number of the format: grows when a member is added.</summary>
    private const int Format = 3;

    /// <summary>The file of an export.</summary>
    internal static ExportFile File { get; } =
        new WrittenFile(
            "comparison.json",
            "application/json",
            ExportWords.ComparisonDescription,
            source =>
                Encoding.UTF8.GetBytes(Of(source.Comparison, StudyLegs.ComparisonOf(source.Study), source.Verdicts, source.Ring) + "\n")
        );

    /// <summary>The comparison as one JSON object, indented.</summary>
    /// <param name="comparison">The comparison of the readings.</param>
    /// <param name="energy">The comparison of the energy days, which adds the member 'energy'; null: none were driven.</param>
    /// <param name="verdicts">The lines of the verdicts, which add the member 'verdicts'; null: they were not asked for.</param>
    /// <param name="ring">What the recordings say, which adds the member 'ring' to every comparison; null: there are none, or the ring is
    /// covered.</param>
    public static string Of(
        Comparison comparison,
        EnergyComparison? energy = null,
        IReadOnlyList<VerdictLine>? verdicts = null,
        RingFinding? ring = null
    )
    {
        using MemoryStream stream = new();
        Write(comparison, stream, energy, verdicts, ring);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <summary>Writes the comparison to a stream as UTF-8, which stays open.</summary>
    public static void Write(
        Comparison comparison,
        Stream stream,
        EnergyComparison? energy = null,
        IReadOnlyList<VerdictLine>? verdicts = null,
        RingFinding? ring = null
    )
    {
        ArgumentNullException.ThrowIfNull(comparison);
        using Utf8JsonWriter json = new(stream, JsonNumbers.Layout);
        json.WriteStartObject();
        json.WriteString("reference", comparison.Reference);
        json.Figure("margin_db", comparison.MarginDb);
        json.Figure("impact_margin_db", comparison.ImpactMarginDb);
        json.Part("readings", comparison.Readings, counts => Counts(json, counts));
        json.Parts("comparisons", comparison.Comparisons, pair => Pair(json, pair, ring));
        json.Parts("codes", comparison.Codes, code => Code(json, code));
        json.Parts("pairs", comparison.Pairs, pair => AnyPair(json, pair));
        json.Parts("suspicious", comparison.Suspicious, reading => Suspicious(json, reading));
        json.Texts("remarks", comparison.Remarks);
        if (comparison.MainSegments is { } main)
        {
            json.Texts("main_segments", main);
        }

        if (comparison.AskedPairs.Count > 0)
        {
            json.Parts("asked_pairs", comparison.AskedPairs, pair => Pair(json, pair, ring: null));
        }

        json.WriteNumber("format", Format);
        json.WriteNumber("looks", comparison.Lengthened);
        json.WriteBoolean("unfinished", comparison.IsUnfinished);
        if (verdicts is not null)
        {
            json.Parts("verdicts", verdicts, line => Verdict(json, line));
        }

        if (energy is not null)
        {
            json.Part("energy", energy, days => EnergyJson.Write(json, days));
        }

        json.WriteEndObject();
    }

    /// <summary>The word of a class: all, steady, impact.</summary>
    internal static string Word(MeasureClass? measureClass) =>
        measureClass switch
        {
            null => "all",
            MeasureClass.Steady => "steady",
            _ => "impact",
        };

    private static void Verdict(Utf8JsonWriter json, VerdictLine line)
    {
        json.WriteString("question", line.Question);
        json.WriteString("against", line.Against);
        json.WriteString("line", FormatWords.Line(line.Line));
        json.WriteString("word", line.Word);
        json.WriteString("reason", line.Reason);
        json.WriteString("hangs_on", line.HangsOn);
        json.Count("looks", line.Looks);
    }

    private static void Counts(Utf8JsonWriter json, ReadingCounts counts)
    {
        json.WriteNumber("total", counts.Total);
        json.WriteNumber("spoilt", counts.Spoilt);
        json.WriteNumber("missed", counts.Missed);
        json.WriteStartObject("by_cause");
        foreach ((string cause, int count) in counts.ByCause)
        {
            json.WriteNumber(cause, count);
        }

        json.WriteEndObject();
        json.WriteNumber("replaced", counts.Replaced);
    }

    private static void Pair(Utf8JsonWriter json, CodeComparison pair, RingFinding? ring)
    {
        json.WriteString("code", pair.Code);
        json.WriteString("reference", pair.Reference);
        json.Part("classes", pair.Classes, classes => Classes(json, classes));
        json.Part("with_spoilt", pair.WithSpoilt, classes => Classes(json, classes));
        if (ring?.Of(pair.Code) is { } heard)
        {
            json.Part("ring", heard, one => RingJson.Write(json, one, ring));
        }
    }

    private static void Classes(Utf8JsonWriter json, ClassComparisons classes)
    {
        json.Part("all", classes.All, one => ClassJson.Write(json, one));
        json.Part("steady", classes.Steady, one => ClassJson.Write(json, one));
        json.Part("impact", classes.Impact, one => ClassJson.Write(json, one));
    }

    private static void Code(Utf8JsonWriter json, CodeReadings code)
    {
        json.WriteString("code", code.Code);
        json.WriteNumber("runs", code.Runs);
        json.WriteNumber("readings", code.Readings);
        json.WriteNumber("spoilt", code.Spoilt);
        json.Figure("mean_width_db", code.MeanWidthDb);
        json.WriteNumber("replaced", code.Replaced);
    }

    private static void AnyPair(Utf8JsonWriter json, PairEstimate pair)
    {
        json.WriteString("class", Word(pair.Class));
        json.WriteString("first", pair.First);
        json.WriteString("second", pair.Second);
        json.Part("overall", pair.Overall, overall => ClassJson.Estimate(json, overall));
        json.Figure("p_holm", pair.PHolm);
    }

    private static void Suspicious(Utf8JsonWriter json, SuspiciousReading reading)
    {
        json.WriteNumber("run", reading.Run);
        json.WriteString("segment", reading.Segment);
        json.WriteString("class", Word(reading.Class));
        json.Figure("studentised_residual", reading.StudentisedResidual);
        json.Figure("p_bonferroni", reading.PBonferroni);
    }
}

/// <summary>The ring of one pair as JSON: the member 'ring' of a comparison. Written only once the ring is uncovered.</summary>
internal static class RingJson
{
    /// <summary>Writes the fields into an open object: those of a class, then what is the ring's own.</summary>
    public static void Write(Utf8JsonWriter json, RingPair pair, RingFinding ring)
    {
        ClassJson.Write(json, pair.Main);
        json.WriteStartArray("band_hz");
        json.WriteNumberValue(ring.Band.LowerHz);
        json.WriteNumberValue(ring.Band.UpperHz);
        json.WriteEndArray();
        json.Figure("ring_margin_db", ring.MarginDb);
        json.WriteStartObject("explored");
        foreach (ExploredBand band in pair.Explored)
        {
            json.WriteStartObject(band.Name);
            ClassJson.Estimate(json, band.Estimate);
            json.Figure("p_holm", band.PHolm);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.Part("decay", pair.Lasting, lasting => Lasting(json, lasting));
        json.WriteBoolean("calibrated", ring.IsCalibrated);
        json.WriteString("no_verdict_because", ring.WhyNone);
        json.WriteBoolean("hangs_on_short_events", pair.HangsOnShortEvents);
        json.Count("runs_heard", ring.RunsHeard);
        json.Figure("ring_found_hz", ring.Found?.PeakHz);
    }

    private static void Lasting(Utf8JsonWriter json, RingLasting lasting)
    {
        json.Figure("ratio", lasting.Ratio);
        json.Figure("lo95", lasting.Low95);
        json.Figure("hi95", lasting.High95);
        json.Figure("p", lasting.P);
        json.Count("runs", lasting.Runs);
    }
}
