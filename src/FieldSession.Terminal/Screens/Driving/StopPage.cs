using System.Collections.Immutable;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The last run in words, passage by passage in the order it was typed, and the conditions it was driven in.</summary>
internal sealed class StopPage
{
    private const int MarkColumns = 5;
    private const int LevelColumns = 12;
    private const int KindColumns = 9;
    private const int RoomForKind = 76;

    private readonly Study _study;
    private readonly int _place;
    private readonly TimeZoneInfo _zone;
    private readonly int _columns;

    /// <summary>The page.</summary>
    /// <param name="study">The study.</param>
    /// <param name="place">Place of the marked passage in the run, from 0.</param>
    /// <param name="zone">The time zone that the crew's clocks show.</param>
    /// <param name="columns">Columns to fill.</param>
    public StopPage(Study study, int place, TimeZoneInfo zone, int columns)
    {
        (_study, _place, _zone, _columns) = (study, place, zone, columns);
        ImmutableArray<PageRow>.Builder rows = ImmutableArray.CreateBuilder<PageRow>();
        if (study.LastRun is { } run)
        {
            rows.Add(Head(run));
            for (int i = 0; i < run.Passages.Count; i++)
            {
                MarkedRow = i == place ? rows.Count : MarkedRow;
                rows.AddRange(Passage(run, i));
            }

            rows.AddRange(Beside(run));
        }
        else
        {
            rows.Add(PageRow.Of(DrivingScreenWords.NoRunDrivenYet, Ink.Strong));
        }

        rows.Add(PageRow.Blank);
        rows.AddRange(Conditions().SelectMany(words => Wrapped.Lines(words, columns)).Select(line => PageRow.Of(line)));
        Rows = rows.ToImmutable();
    }

    /// <summary>The rows.</summary>
    public ImmutableArray<PageRow> Rows { get; }

    /// <summary>The row of the marked passage; null: there is none.</summary>
    public int? MarkedRow { get; }

    private int NameColumns => _columns >= RoomForKind ? 22 : 18;

    private int WordsFrom => MarkColumns + NameColumns + LevelColumns + (_columns >= RoomForKind ? KindColumns : 0);

    private PageRow Head(Run run)
    {
        string driver = run.Driver is { } name ? $"  driver {name}" : "";
        string car = run.Car is { } which ? $"  car {which}" : "";
        int asked = run.Readings.Count(reading => reading.IsToBeAsked);
        int spoilt = run.Readings.Count(reading => reading.Spoilt is not null);
        string counts = DrivingScreenWords.StopCounts(asked, spoilt, run.Passages.OfType<Missed>().Count());
        string title = DrivingScreenWords.RunAsTyped(run);
        string who = Columns.Of(title + driver + car + counts) + 1 < _columns ? driver + car : "";
        return PageRow.Of(title, Ink.Strong).And(who, Ink.Quiet)
            .WithRight(PageRow.Of(counts, asked > 0 ? Ink.Strong : Ink.Plain), _columns);
    }

    private IEnumerable<PageRow> Passage(Run run, int place)
    {
        Passage passage = run.Passages[place];
        bool isMarked = place == _place;
        Segment segment = _study.Plan!.Route[passage.Segment - 1];
        PageRow row = PageRow
            .Of($"{(isMarked ? ">" : " ")}{passage.Segment,3} ", Ink.Strong)
            .And(Columns.Left(segment.Name, NameColumns - 1) + " ", isMarked ? Ink.Strong : Ink.Plain)
            .And(_columns >= RoomForKind ? Columns.Left(segment.Kind.Word, KindColumns) : "", Ink.Quiet)
            .And(Columns.Left(Levels(passage), LevelColumns), isMarked ? Ink.Strong : Ink.Plain);
        string[] lines = [.. Words(run, passage).SelectMany(words => Wrapped.Lines(words, Math.Max(12, _columns - WordsFrom)))];
        yield return row.And(lines.FirstOrDefault(""));
        foreach (string line in lines.Skip(1))
        {
            yield return PageRow.Of(new string(' ', WordsFrom)).And(line);
        }
    }

    private static string Levels(Passage passage) => passage switch
    {
        Reading reading => $"{reading.Levels}{(reading.IsToBeAsked ? " ?" : "")}{(reading.Spoilt is null ? "" : " !")}",
        _ => "missed",
    };

    private IEnumerable<string> Words(Run run, Passage passage) =>
        (passage is Reading reading ? OfReading(reading) : []).Concat(Notes(run, passage.Segment));

    private static IEnumerable<string> OfReading(Reading reading)
    {
        string?[] words =
        [
            reading.Doubt is not { } doubt ? null : reading.Confirmed ? DrivingScreenWords.ConfirmedAsTyped : $"? {doubt}",
            reading.CorrectedFrom is { } first ? $"corrected from {first}" : null,
            reading.Swapped ? DrivingScreenWords.TypedHighFirst : null,
            reading.FlagTakenBack is { } cause ? DrivingScreenWords.FlagWasTakenBack(cause) : null,
            reading.Spoilt is { } spoilt ? Flag(spoilt) : null,
        ];
        return words.OfType<string>();
    }

    private static string Flag(Spoiling spoilt) =>
        $"! {spoilt.Cause.Word()}{(spoilt.Late ? ", flagged late" : "")}{(spoilt.Words is null ? "" : $": {spoilt.Words}")}";

    private IEnumerable<string> Notes(Run run, int? segment) => _study.Notes
        .Where(note => note.Run == run.Number && note.Segment == segment)
        .Select(note => $"; {note.Words}{(note.Who is null ? "" : $" ({note.Who})")}");

    private IEnumerable<PageRow> Beside(Run run) => Notes(run, null)
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

        string[] elsewhere = [.. _study.Runs.Where(run => run.Number != _study.LastRun?.Number).SelectMany(run => run.Readings.Where(r => r.IsToBeAsked).Select(r => $"{run.Number}.{r.Segment}"))];
        if (elsewhere.Length > 0)
        {
            yield return DrivingScreenWords.OtherRunsToAsk(elsewhere);
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
