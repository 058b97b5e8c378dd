using System.Collections.Immutable;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The stop in words: the last run in route order, doubts of earlier runs, the conditions, and what else there is to do.</summary>
internal sealed class StopPage
{
    private const int MarkColumns = 5;
    private const int LevelColumns = 12;
    private const int KindColumns = 9;
    private const int RoomForKind = 76;
    private const int RoomForLongNames = 110;

    private readonly Study _study;
    private readonly ImmutableArray<StopRow> _stops;
    private readonly TimeZoneInfo _zone;
    private readonly int _columns;

    /// <summary>The page.</summary>
    /// <param name="study">The study.</param>
    /// <param name="stops">The rows of the stop.</param>
    /// <param name="place">Place of the marked row, from 0.</param>
    /// <param name="desk">What the screens may use: keys and the crew's clock.</param>
    /// <param name="columns">Columns to fill.</param>
    public StopPage(Study study, ImmutableArray<StopRow> stops, int place, Desk desk, int columns)
    {
        (_study, _stops, _zone, _columns) = (study, stops, desk.Clock.LocalTimeZone, columns);
        ImmutableArray<PageRow>.Builder rows = ImmutableArray.CreateBuilder<PageRow>();
        if (study.LastRun is { } run)
        {
            rows.Add(Head(run));
            for (int i = 0; i < stops.Length; i++)
            {
                rows.AddRange(BeforeEarlier(i, run));
                MarkedRow = i == place ? rows.Count : MarkedRow;
                rows.AddRange(Row(stops[i], i == place));
            }

            rows.AddRange(Beside(run));
        }
        else
        {
            rows.Add(PageRow.Of(DrivingScreenWords.NoRunDrivenYet, Ink.Strong));
        }

        rows.Add(PageRow.Blank);
        rows.AddRange(Conditions().SelectMany(words => Wrapped.Lines(words, columns)).Select(line => PageRow.Of(line)));
        PageRow[] rest = [.. WhatNext.RowsWhenReadBack(study, desk.Keys, columns)];
        rows.AddRange(rest);
        Rows = rows.ToImmutable();
    }

    /// <summary>The rows.</summary>
    public ImmutableArray<PageRow> Rows { get; }

    /// <summary>The row of the page on which the marked one begins; null: there is none.</summary>
    public int? MarkedRow { get; }

    private int NameColumns =>
        _columns switch
        {
            >= RoomForLongNames => 34,
            >= RoomForKind => 22,
            _ => 18,
        };

    private int WordsFrom => MarkColumns + NameColumns + LevelColumns + (_columns >= RoomForKind ? KindColumns : 0);

    private PageRow Head(Run run)
    {
        string driver = run.Driver is { } name ? $"  driver {name}" : "";
        string car = run.Car is { } which ? $"  car {which}" : "";
        StopRow[] own = [.. _stops.Where(row => row.Run.Number == run.Number)];
        int asked = own.Count(row => row.IsOpenDoubt);
        string counts = DrivingScreenWords.StopCounts(
            asked,
            own.Count(row => row.Reading?.Spoilt is not null),
            own.Count(row => row.Reading is null)
        );
        string title = DrivingScreenWords.RunAsTyped(run);
        string who = Columns.Of(title + driver + car + counts) + 1 < _columns ? driver + car : "";
        return PageRow
            .Of(title, Ink.Strong)
            .And(who, Ink.Quiet)
            .WithRight(PageRow.Of(counts, asked > 0 ? Ink.Strong : Ink.Plain), _columns);
    }

    private IEnumerable<PageRow> BeforeEarlier(int place, Run last)
    {
        Run run = _stops[place].Run;
        bool begins = run.Number != last.Number && (place == 0 || _stops[place - 1].Run.Number != run.Number);
        return begins ? [PageRow.Of(DrivingScreenWords.EarlierDoubts(run.Number), Ink.Strong)] : [];
    }

    private IEnumerable<PageRow> Row(StopRow stop, bool isMarked)
    {
        PageRow row = PageRow
            .Of($"{(isMarked ? ">" : " ")}{stop.Segment.Number, 3} ", Ink.Strong)
            .And(Columns.Left(stop.Segment.Name, NameColumns - 1) + " ", isMarked ? Ink.Strong : Ink.Plain)
            .And(_columns >= RoomForKind ? Columns.Left(stop.Segment.Kind.Word, KindColumns) : "", Ink.Quiet)
            .And(Columns.Left(Levels(stop), LevelColumns), isMarked ? Ink.Strong : Ink.Plain);
        string[] lines = [.. Words(stop).SelectMany(words => Wrapped.Lines(words, Math.Max(12, _columns - WordsFrom)))];
        yield return row.And(lines.FirstOrDefault(""));
        foreach (string line in lines.Skip(1))
        {
            yield return PageRow.Of(new string(' ', WordsFrom)).And(line);
        }
    }

    private static string Levels(StopRow stop) =>
        $"{stop.Levels}{(stop.Reading?.IsToBeAsked == true ? " ?" : "")}{(stop.Reading?.Spoilt is null ? "" : " !")}";

    private IEnumerable<string> Words(StopRow stop) =>
        TypedLater(stop.Passage).Concat(stop.Reading is { } reading ? OfReading(reading) : []).Concat(Notes(stop.Run, stop.Segment.Number));

    private IEnumerable<string> TypedLater(Passage? passage) =>
        passage?.Mark is { IsTypedLater: true } mark ? [DrivingScreenWords.TypedLater(Clock(mark))] : [];

    private static string? Flag(Spoiling? spoilt) =>
        spoilt is null
            ? null
            : $"! {spoilt.Cause.Word()}{(spoilt.Late ? ", flagged late" : "")}{(spoilt.Words is null ? "" : $": {spoilt.Words}")}";

    private static IEnumerable<string> OfReading(Reading reading)
    {
        string?[] words =
        [
            reading.Doubt is not { } doubt ? null
            : reading.Confirmed ? DrivingScreenWords.ConfirmedAsTyped
            : $"? {doubt}",
            reading.CorrectedFrom is { } first ? $"corrected from {first}" : null,
            reading.FilledAtStop ? DrivingScreenWords.FilledAtStop : null,
            reading.Swapped ? DrivingScreenWords.TypedHighFirst : null,
            reading.FlagTakenBack is { } cause ? DrivingScreenWords.FlagWasTakenBack(cause) : null,
            Flag(reading.Spoilt),
        ];
        return words.OfType<string>();
    }

    private IEnumerable<string> Notes(Run run, int? segment) =>
        _study
            .Notes.Where(note => note.Run == run.Number && note.Segment == segment)
            .Select(note => $"; {note.Words}{(note.Who is null ? "" : $" ({note.Who})")}");

    private IEnumerable<PageRow> Beside(Run run) =>
        Notes(run, null)
            .SelectMany(words => Wrapped.Lines(words, _columns - MarkColumns))
            .Select(line => PageRow.Of(new string(' ', MarkColumns)).And(line));

    private IEnumerable<string> Conditions()
    {
        if (_study.Weather.LastOrDefault() is { } weather)
        {
            yield return $"weather {Clock(weather.Mark)}: {Weather(weather)}";
        }

        if (_study.SessionOn?.Before is { } before)
        {
            yield return DrivingScreenWords.CalibratedBefore(Clock(before.Mark), before);
        }

        foreach (string words in StopRecordings.Of(_study))
        {
            yield return words;
        }
    }

    private string Clock(LineMark mark) => $"{TimeZoneInfo.ConvertTime(mark.At, _zone):t}";

    private string Weather(Weather weather)
    {
        UnitSystem units = _study.Plan!.Units;
        string?[] parts =
        [
            weather.Air is { } air ? $"air {air.In(units)}" : null,
            weather.Road is { } road ? $"road {road.In(units)}" : null,
            weather.Wind is { } wind ? $"wind {wind.In(units)}" : null,
            weather.Gust is { } gust ? $"gusts {gust.In(units)}" : null,
            weather.Surface is { } surface ? $"surface {surface}" : null,
        ];
        return string.Join(", ", parts.OfType<string>());
    }
}
