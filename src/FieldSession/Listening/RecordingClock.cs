using System.Collections.Immutable;
using FieldSession.Aligning;
using FieldSession.Journal;

namespace FieldSession.Listening;

/// <summary>
/// When a recording began on the laptop's clock. Times of the laptop are seconds from 1970, those of the recording seconds from its first
/// sample. Marks go first, then what somebody gave, then the recorder's own clock, then the time of the file.
/// </summary>
/// <param name="Offset">Recording = laptop + offset; null: it can't be told.</param>
/// <param name="Objection">Why it can't be told, and what to give; null: it can.</param>
public sealed record RecordingClock(ClockOffset? Offset, Objection? Objection)
{
    private const double GivenHalfRangeS = 1;

    // a mark and a file's time agree within both half-ranges and a second more
    private const double AgreeS = ClockOffset.FileTimeHalfRangeS + ClockMark.KeyHalfRangeS + 1;

    // zones lie a quarter of an hour apart; the file's own time tells which one
    private const double ZoneStepS = 900;
    private const double ZoneFitsS = 5;

    /// <summary>Seconds of a time on the laptop's clock.</summary>
    public static double SecondsOf(DateTimeOffset at) => (at - DateTimeOffset.UnixEpoch).TotalSeconds;

    /// <summary>When the recording began.</summary>
    /// <exception cref="InvalidOperationException">It can't be told.</exception>
    public DateTimeOffset BegunAt =>
        DateTimeOffset.UnixEpoch.AddSeconds(
            Offset is { } offset
                ? (offset.RateError * offset.AtLaptopS - offset.OffsetS) / (1 + offset.RateError)
                : throw new InvalidOperationException("no clock")
        );

    /// <summary>Tells when a recording began.</summary>
    /// <param name="survey">What was read of it.</param>
    /// <param name="terms">What somebody says about it.</param>
    /// <param name="marks">The moments at which the marks' key was hit.</param>
    public static RecordingClock Of(Survey survey, ListeningTerms terms, IEnumerable<DateTimeOffset> marks)
    {
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(terms);
        (double? begun, bool isZoneOpen) = FileBegin(survey, terms);
        ClockOffset? file =
            terms.BegunAt is { } given ? new(-SecondsOf(given), GivenHalfRangeS, ClockSource.Given)
            : begun is { } at ? new(-at, ClockOffset.FileTimeHalfRangeS, ClockSource.FileTime)
            : null;
        ClockOffset? marked = terms.Trust == ClockSource.FileTime ? null : Marked(survey, [.. marks.Select(SecondsOf)], file?.OffsetS);
        return (marked, file) switch
        {
            ({ } one, { } other) when terms.Trust is null && Math.Abs(one.OffsetS - other.OffsetS) > AgreeS => No(
                ListeningWords.MarksContradictFile(other.OffsetS - one.OffsetS),
                ListeningWords.SayWhichClock
            ),
            ({ } one, _) => new(one, null),
            (null, { } other) => new(other, null),
            _ => isZoneOpen
                ? No(ListeningWords.ZoneIsNotTold, ListeningWords.GiveZone)
                : No(ListeningWords.NoTimeKnown, ListeningWords.GiveBegin),
        };
    }

    private static RecordingClock No(string why, string instead) => new(null, new Objection(why, instead));

    // seconds from 1970 by the recorder's clock, else by the time at which the file was closed
    private static (double? Begun, bool IsZoneOpen) FileBegin(Survey survey, ListeningTerms terms)
    {
        double ahead = terms.OffsetS ?? 0;
        double? closed = survey.WrittenAt is { } written ? SecondsOf(written) - survey.Seconds - ahead : null;
        if (survey.ToldBegin is not { } told)
        {
            return (closed, false);
        }

        double asUtc = SecondsOf(new DateTimeOffset(DateTime.SpecifyKind(told, DateTimeKind.Unspecified), TimeSpan.Zero)) - ahead;
        if (terms.Zone is { } zone)
        {
            return (asUtc - zone.TotalSeconds, false);
        }

        double? distance = asUtc - closed;
        double near = Math.Round((distance ?? 0) / ZoneStepS) * ZoneStepS;
        return distance is { } known && Math.Abs(known - near) <= ZoneFitsS ? (asUtc - near, false) : (null, true);
    }

    // every mark may belong to every three knocks: the offset that most pairs agree on, near the file's time if there is one
    private static ClockOffset? Marked(Survey survey, ImmutableArray<double> marks, double? fileOffset)
    {
        ClockMark[] pairs = [.. marks.SelectMany(mark => survey.Knocks.Select(knock => new ClockMark(mark, knock)))];
        ClockMark[][] groups =
        [
            .. pairs
                .Select(pair => Agreeing(pairs, pair))
                .OrderByDescending(group => group.Length)
                .ThenBy(group => DistanceOf(group, fileOffset)),
        ];
        ClockMark[]? near = Array.Find(groups, group => fileOffset is not null && DistanceOf(group, fileOffset) <= AgreeS);
        bool isClear =
            groups.Length > 0 && !Array.Exists(groups, group => group.Length == groups[0].Length && OffsetOf(group) != OffsetOf(groups[0]));
        return ClockOffset.OfMarks(near ?? (isClear ? groups[0] : []));
    }

    private static ClockMark[] Agreeing(ClockMark[] pairs, ClockMark with) =>
        [.. pairs.Where(pair => Math.Abs(pair.RecorderS - pair.LaptopS - (with.RecorderS - with.LaptopS)) <= 2 * ClockMark.KeyHalfRangeS)];

    private static double OffsetOf(ClockMark[] group) => group.Average(pair => pair.RecorderS - pair.LaptopS);

    private static double DistanceOf(ClockMark[] group, double? fileOffset) =>
        fileOffset is { } file ? Math.Abs(OffsetOf(group) - file) : 0;
}
