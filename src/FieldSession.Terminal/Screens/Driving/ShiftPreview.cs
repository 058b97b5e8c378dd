using System.Collections.Immutable;
using FieldSession.Driving;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>A shift that is looked at before it is taken: which readings would be where.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Stretch">The segments that move.</param>
/// <param name="By">How many segments further on (above 0) or back (below 0).</param>
internal sealed record ShiftPreview(int Run, Stretch Stretch, int By)
{
    private const int NameColumns = 28;
    private const int LevelColumns = 16;

    /// <summary>The entry line that takes it.</summary>
    public string Line => $"shift {Run}.{Stretch.From}-{Stretch.To} {By:+0;-0}";

    /// <summary>The shift that a typed line means; null: the line means something else, or the shift is refused.</summary>
    public static ShiftPreview? Of(string line, Study study) =>
        EntryText.Parse(line, study).Entry is RunShifted { ToSegment: { } last } shift && shift.ObjectionIn(study) is null
            ? new ShiftPreview(shift.Run, new Stretch(shift.FromSegment, last), shift.By)
            : null;

    /// <summary>The table: each segment that changes, what is there now and what would be there.</summary>
    public ImmutableArray<PageRow> Rows(Study study)
    {
        Run run = study.Runs[Run - 1];
        return
        [
            PageRow.Of(DrivingScreenWords.ShiftAsked(this), Ink.Strong),
            PageRow.Blank,
            PageRow.Of($"{Columns.Left("     segment", NameColumns + 5)}{Columns.Left("now", LevelColumns)}then", Ink.Quiet),
            .. study
                .Plan!.Route.Where(segment => Stretch.Holds(segment.Number) || Stretch.Holds(segment.Number - By))
                .Select(segment =>
                    PageRow
                        .Of($"{segment.Number, 4} {Columns.Left(segment.Name, NameColumns)}")
                        .And(Columns.Left(Levels(run, segment.Number), LevelColumns))
                        .And(Then(run, segment.Number), Ink.Strong)
                ),
        ];
    }

    private string Then(Run run, int segment) => Stretch.Holds(segment - By) ? Levels(run, segment - By) : DrivingScreenWords.NotRead;

    private static string Levels(Run run, int segment) =>
        run.ReadingsOn(segment) is { Length: > 0 } readings
            ? string.Join(", ", readings.Select(reading => $"{reading.Levels}{(reading.Spoilt is null ? "" : " !")}"))
            : DrivingScreenWords.NotRead;
}
