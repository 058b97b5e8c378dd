using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What was just stored, as understood: large figures with ? where doubtful and ! where spoilt, and the same in words.</summary>
internal static class StoredBlock
{
    private const int LetterRows = 3;

    /// <summary>The rows: three beside large figures, or two of plain words.</summary>
    public static IEnumerable<PageRow> Rows(Study study, int columns, bool large, LetterForm form)
    {
        Passage? last = study.LastRun is { Passages.Count: > 0 } run ? run.Passages[^1] : null;
        string figures = Figures(last);
        PageRow[] words = [.. Words(last, study)];
        if (!large)
        {
            return
            [
                PageRow.Of("stored ", Ink.Quiet).And(figures, Ink.Strong).And(figures.Length > 0 ? "  " : "").And(words[0]),
                last is Reading { Doubt: not null } ? words[2] : words[1],
            ];
        }

        ImmutableArray<string> letters = LargeText.Of(figures, columns - 14, LetterRows, form);
        int gap = letters.Max(Columns.Of) + 3;
        return Enumerable.Range(0, LetterRows).Select(row => PageRow
            .Of(Columns.Left(row < letters.Length ? letters[row] : "", gap), Ink.Strong)
            .And(words[row]));
    }

    private static string Figures(Passage? last) => last switch
    {
        Reading reading => $"{reading.Levels}{(reading.Doubt is null ? "" : "?")}{(reading.Spoilt is null ? "" : "!")}",
        Missed => "missed",
        _ => "",
    };

    private static IEnumerable<PageRow> Words(Passage? last, Study study)
    {
        if (last is null)
        {
            return [PageRow.Of(DrivingScreenWords.NothingStoredInRun, Ink.Quiet), PageRow.Blank, PageRow.Blank];
        }

        PageRow segment = PageRow.Of($"{last.Segment} {study.Plan!.Route[last.Segment - 1].Name}", Ink.Strong);
        return last is Reading reading
            ? [segment, Spoilt(reading), reading.Doubt is { } doubt ? PageRow.Of($"? {doubt}", Ink.Alarm) : PageRow.Blank]
            : [segment, PageRow.Of(DrivingScreenWords.MissedPassage), PageRow.Blank];
    }

    private static PageRow Spoilt(Reading reading)
    {
        string swapped = reading.Swapped ? DrivingScreenWords.AfterReadingTypedHighFirst : "";
        return reading.Spoilt is { } spoilt
            ? PageRow.Of($"! spoilt: {spoilt.Cause.Word()}{(spoilt.Late ? " (late)" : "")}{(spoilt.Words is null ? "" : $", {spoilt.Words}")}{swapped}")
            : PageRow.Of($"clean{swapped}");
    }
}
