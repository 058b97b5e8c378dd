using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession;

/// <summary>Lines that are typed in from paper: when they may be, and what is said to them.</summary>
internal static class PaperLines
{
    /// <summary>The entry with the time of the paper, or what rules it out.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="paper">What was typed before it.</param>
    /// <param name="now">Now.</param>
    /// <param name="zone">The time zone that the crew's clocks show.</param>
    /// <param name="last">When the last fact of the day happened, as far as this laptop wrote it; null: none yet.</param>
    public static Parsed Of(Entry entry, PaperTime paper, DateTimeOffset now, TimeZoneInfo zone, DateTimeOffset? last)
    {
        DateTimeOffset at = paper.Moment(now, zone);
        // the paper tells minutes: within one, the order of the lines holds
        at = last is { } known && known > at && known - at < TimeSpan.FromMinutes(1) ? TimeZoneInfo.ConvertTime(known, zone) : at;
        Objection? objection =
            ObjectionToKind(entry, paper)
            ?? (
                at > now ? new Objection(LogbookWords.TimeIsToCome(at), LogbookWords.PaperTimeForm)
                : at < last
                    ? new Objection(
                        LogbookWords.TimeIsBeforeLast(at, TimeZoneInfo.ConvertTime(last.Value, zone)),
                        LogbookWords.TypePaperInOrder
                    )
                : null
            );
        return objection is null
            ? Parsed.As(entry with { Paper = new OnPaper(at, paper.OnSpot ? true : null) })
            : new Parsed(null, objection);
    }

    private static Objection? ObjectionToKind(Entry entry, PaperTime paper) =>
        (entry, paper) switch
        {
            ({ MayBeOnPaper: false }, _) => new Objection(LogbookWords.IsNeverOnPaper, LogbookWords.TypeItWithoutTime),
            ({ HoldsFlag: false }, { OnSpot: true }) => new Objection(LogbookWords.SpotIsAboutFlag, LogbookWords.LeaveSpotAway),
            _ => null,
        };

    /// <summary>The study after a fact; one from paper is at the paper's time.</summary>
    public static Study Applied(Entry entry, Study study, LineMark mark)
    {
        LineMark told = entry.Paper is { } paper ? mark with { At = paper.At, IsTypedLater = true } : mark;
        Study after = entry.ApplyTo(study, told);
        // plan and seal are no facts of the day: the paper may be older
        return entry.MayBeOnPaper && !study.DataFrozen ? after with { Hand = after.Hand with { LastOfDay = told.At } } : after;
    }

    /// <summary>What is said to a fact, with the time of the paper.</summary>
    public static Echo EchoOf(Entry entry, Study before, Study after)
    {
        Echo echo = entry.EchoIn(before, after);
        return entry.Paper is { } paper ? echo with { Words = echo.Words + LogbookWords.TypedLater(paper) } : echo;
    }
}
