using FieldSession.Checking;
using FieldSession.Driving;
using FieldSession.Flagging;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.Predicting;
using FieldSession.Revealing;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journal;

/// <summary>One fact of every kind, in the order of the job, with every member set: what the kept lines were written from.</summary>
internal static class OneOfEachKind
{
    private static readonly SpecCode One = new("417");
    private static readonly SpecCode Other = new("862");

    public static IEnumerable<Entry> All =>
    [
        new PlanMade(ADay.ShortPlan),
        new SpecsSealed([One, Other], new string('a', 64)),
        new CalibrationChecked(false, 94.1),
        new WeatherNoted(
            Temperature.FromCelsius(6.1), Temperature.FromCelsius(5), WindSpeed.FromMetresPerSecond(2.5), WindSpeed.FromMetresPerSecond(4), "dry"),
        new CheckOverridden("wind", "gusts only at the bridge, \u00fc\"<"),
        new RunStarted(One, "Ro"),
        new ReadingTaken(LevelRange.FromDb(58.4, 60.1), true, SpoiltCause.Traffic, "van alongside"),
        new SegmentMissed(),
        new SegmentChosen(3),
        new RunEnded(),
        new ActUndone(10),
        new NoteMade("hollow ring", "Tam"),
        new ReadingSpoilt(7, SpoiltCause.EntryDoubt, "58 or 68"),
        new FlagTakenBack(7),
        new PredictionLocked("Ro", Other, 3, One, true, PredictionBasis.Sound, "softer at low speed"),
        new KeyOpened(
            [new CodedSpec(One, "STANDARD"), new CodedSpec(Other, "STIFFENED")],
            "STANDARD",
            "8f1d6c0b2a4e49579d03c7e1b6a85f42",
            true,
            [new MarkRead(One, "STANDARD"), new MarkRead(Other, "STIFFENED")],
            ["Ilse", "Tam"]),
    ];
}
