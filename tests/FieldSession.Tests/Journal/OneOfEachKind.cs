using System.Collections.Immutable;
using FieldSession.Aligning;
using FieldSession.Checking;
using FieldSession.Driving;
using FieldSession.EnergyDriving;
using FieldSession.Flagging;
using FieldSession.Journal;
using FieldSession.Listening;
using FieldSession.Measures;
using FieldSession.Merging;
using FieldSession.Planning;
using FieldSession.Predicting;
using FieldSession.Rating;
using FieldSession.Revealing;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Tests.Journal;

/// <summary>One fact of every kind, in the order of the job, with every member set: what the kept lines were written from.</summary>
internal static class OneOfEachKind
{
    private static readonly SpecCode One = new("417");
    private static readonly SpecCode Other = new("862");

    private static Plan FullPlan =>
        new()
        {
            StudyName = "QW-0114",
            Question = "Is the candidate louder?",
            MainMeasure = MainMeasure.Impact,
            SpecCount = 2,
            Order = [new Place(0), new Place(1), new Place(0)],
            Route =
            [
                new Segment(1, "Mill lane", SegmentKind.Of("smooth"), Speed.FromKmh(80), Distance.FromMetres(500))
                {
                    Limit = Speed.FromKmh(100),
                    NominalDb = 60.5,
                    StartMark = "white post",
                    Phrase = "grit here",
                },
                new Segment(2, "Bridge joint", SegmentKind.Of("impact"), Speed.FromMph(30), Distance.FromMiles(0.1)),
            ],
            Units = UnitSystem.Imperial,
            MarginDb = 1.5,
            ImpactMarginDb = 2.5,
            Crew = [new CrewMember("Ro", CrewMember.DriverSeat), new CrewMember("Tam", CrewMember.CoDriverSeat)],
            Custodian = "Ilse",
            Phrases = ["hollow ring", "grit"],
            Attributes = ["roar"],
            Protocol = "windows shut",
            CalibratorDb = 114,
            CoveredUntilEvening = true,
            PricePremium = 120,
            Currency = "EUR",
            SetLifeKm = 40000,
            Limits = new Limits { WidthDoubtDb = 6.5 },
        };

    private static LegFigures FullLeg =>
        new()
        {
            Day = 1,
            Car = "X",
            Code = One,
            Distance = Distance.FromMiles(132),
            Energy = Energy.Of(38.6, EnergyUnit.KilowattHour),
            EnergyStep = 0.1,
            Charge = new ChargeUsed(StateOfCharge.FromPercent(80), StateOfCharge.FromPercent(31), 1),
            Usable = Energy.Of(75, EnergyUnit.KilowattHour),
            Driver = "Ro",
            AirAtStart = Temperature.FromCelsius(6),
            AirAtEnd = Temperature.FromCelsius(8),
            Wind = WindSpeed.FromMetresPerSecond(2),
            MeanSpeed = Speed.FromKmh(96),
            At = new TimeOnly(9, 10),
            Minutes = 135,
            Typed = "leg day=1 car=X code=417 mi=132 kwh=38.6",
        };

    private static RunRecording FullRecording =>
        new(2, new string('e', 64), "recorder")
        {
            RateHz = 48_000,
            Bits = 24,
            Channel = 2,
            BegunAt = new DateTimeOffset(2026, 2, 3, 9, 12, 3, TimeSpan.Zero),
            Seconds = 2400.5,
            HalfRangeS = 0.5,
            ClockBy = ClockSource.Marks,
            RateError = 0.0001,
            RingFromHz = 178,
            RingToHz = 282,
            NotHeard = 1,
            Segments =
            [
                new HeardSegment(7, 61.5, 8.25)
                {
                    LAeqDb = -48.1,
                    LCeqDb = -30.2,
                    LAFmaxDb = -45,
                    LAFminDb = -51,
                    L10Db = -46,
                    L50Db = -48,
                    L90Db = -50,
                    BandsDb = [-40.5, null, -41],
                    RingDb = -52.125,
                    RingMedianDb = -52,
                    ProminenceDb = 6.5,
                    SpectrumDb = [-60.25, -61],
                    RingLastsS = 0.25,
                    Clips = 1,
                    HasSpeech = true,
                },
            ],
        };

    public static IEnumerable<Entry> All => [.. Begun, .. Driven, .. Heard, .. Evening];

    private static IEnumerable<Entry> Begun =>
        [
            new PlanMade(FullPlan),
            new PlanAmended("margin_db", "1.0", "1.5", "the owner asks for less"),
            new ArchiveTaken(
                "../archive",
                [
                    new EarlierScatter("QW-0113", "steady", 3, 0.41, 0.1, 54, 0.77),
                    new EarlierScatter("QW-0113", "impact", 0, null, 0.5, 0, null),
                ]
            ),
            new StrandJoined([new StrandEnd("00000000000000aa", 7, new string('c', 64))]),
            new ConflictSettled(
                ConflictKind.SameRun,
                new LineName(null, 8),
                new LineName("00000000000000bb", 2),
                ConflictSide.First,
                "the other one was a try"
            ),
            new SpecsSealed([One, Other], new string('a', 64)),
            new CalibrationChecked(false, 94.1),
            new WeatherNoted(
                Temperature.FromCelsius(6.1),
                Temperature.FromCelsius(5),
                WindSpeed.FromMetresPerSecond(2.5),
                WindSpeed.FromMetresPerSecond(4),
                "dry"
            ),
            new CheckTyped(
                "pressure",
                ImmutableSortedDictionary<string, string>
                    .Empty.Add("fl", "230")
                    .Add("fr", "231")
                    .Add("rl", "250")
                    .Add("rr", "249")
                    .Add("at", "12")
            ),
        ];

    private static IEnumerable<Entry> Driven =>
        [
            new CheckOverridden("wind", "gusts only at the bridge, \u00fc\"<"),
            new RunStarted(One, "Ro"),
            new ReadingTaken(LevelRange.FromDb(58.4, 60.1), true, SpoiltCause.Traffic, "van alongside"),
            new SegmentMissed(),
            new SegmentChosen(3),
            new RunEnded(),
            new AbortExplained(1, "puncture"),
            new ActUndone(10),
            new NoteMade("hollow ring", "Tam"),
            new NoteAttributed(12, "Ro"),
            new LettersTakenBack(7),
            new ReadingConfirmed(1, 2),
            new ReadingCorrected(1, 1, LevelRange.FromDb(58, 60)),
            new ReadingFilled(1, 2, LevelRange.FromDb(70.2, 71), true, SpoiltCause.Traffic, "lorry"),
            new RunShifted(1, 2, -1),
            new BracketRerun(1, "lorry ahead all the way"),
            new ReadingSpoilt(7, SpoiltCause.EntryDoubt, "58 or 68"),
            new FlagTakenBack(7),
            new ExtraNoted(74.2, 60.1, 58, "take12"),
            new RatingGiven("Tam", "coarse roar", Score.FromPoints(6.25), "rear", Other),
            new RatingsClosed(),
            new ChoiceTrialsPlanned(
                new ChoiceTerms(ChoiceKind.Paired, Other, One, "which is louder", 1, Other, 0.9),
                ["AB", "BA", "BA", "AB", "AB"]
            ),
            new SlipTaken(1, "Ilse"),
            new ChoiceMade("Tam", 1, 2, 1),
            new EnergyLegDriven(FullLeg, SpoiltCause.Wind, "shower"),
            new LegSpoilt(1, SpoiltCause.Traffic, "queue"),
        ];

    private static IEnumerable<Entry> Heard =>
        [
            new MarkGiven(),
            new ChainNamed("recorder", "at=headrest gain=3"),
            new ChainCalibrated(
                new ChainGain("recorder", 112.35, new DateTimeOffset(2026, 2, 3, 8, 40, 0, TimeSpan.Zero), new string('d', 64))
            ),
            new RecordingTaken(FullRecording),
            new LogCompared(
                new LogComparison(new string('f', 64), [new LoggedReading(2, 7, EntryFit.TenOff, -9.8, true)])
                {
                    OffsetS = 3.2,
                    HalfRangeS = 1.2,
                    ClockBy = ClockSource.TypedLevels,
                    MedianDb = 0.4,
                    LimitDb = 3,
                    IsLikeSlow = true,
                }
            ),
            new RingOpened("the owner asks"),
        ];

    private static IEnumerable<Entry> Evening =>
        [
            new PredictionLocked("Ro", Other, 3, One, true, PredictionBasis.Sound, "softer at low speed"),
            new KeyOpened(
                [new CodedSpec(One, "STANDARD"), new CodedSpec(Other, "STIFFENED")],
                "STANDARD",
                "8f1d6c0b2a4e49579d03c7e1b6a85f42",
                true,
                [new MarkRead(One, "STANDARD"), new MarkRead(Other, "STIFFENED")],
                ["Ilse", "Tam"]
            ),
            new MarksReadAgain([new MarkRead(One, "STANDARD"), new MarkRead(Other, "STIFFENED")], ["Ilse", "Ro"], []),
        ];
}
