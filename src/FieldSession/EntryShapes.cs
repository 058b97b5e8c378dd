using System.Text.Json.Serialization;
using FieldSession.Checking;
using FieldSession.Driving;
using FieldSession.EnergyDriving;
using FieldSession.Flagging;
using FieldSession.Listening;
using FieldSession.Merging;
using FieldSession.Planning;
using FieldSession.Predicting;
using FieldSession.Rating;
using FieldSession.Revealing;
using FieldSession.Sealing;

namespace FieldSession;

/// <summary>How the entries' members are in JSON; made at build time, so that nothing is looked up at run time.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    IgnoreReadOnlyProperties = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    UseStringEnumConverter = true
)]
[JsonSerializable(typeof(PlanMade))]
[JsonSerializable(typeof(PlanAmended))]
[JsonSerializable(typeof(ArchiveTaken))]
[JsonSerializable(typeof(StrandJoined))]
[JsonSerializable(typeof(ConflictSettled))]
[JsonSerializable(typeof(SpecsSealed))]
[JsonSerializable(typeof(CalibrationChecked))]
[JsonSerializable(typeof(WeatherNoted))]
[JsonSerializable(typeof(CheckTyped))]
[JsonSerializable(typeof(CheckOverridden))]
[JsonSerializable(typeof(RunStarted))]
[JsonSerializable(typeof(ReadingTaken))]
[JsonSerializable(typeof(SegmentMissed))]
[JsonSerializable(typeof(SegmentChosen))]
[JsonSerializable(typeof(RunEnded))]
[JsonSerializable(typeof(AbortExplained))]
[JsonSerializable(typeof(ActUndone))]
[JsonSerializable(typeof(LettersTakenBack))]
[JsonSerializable(typeof(NoteMade))]
[JsonSerializable(typeof(NoteAttributed))]
[JsonSerializable(typeof(ReadingConfirmed))]
[JsonSerializable(typeof(ReadingCorrected))]
[JsonSerializable(typeof(ReadingFilled))]
[JsonSerializable(typeof(RunShifted))]
[JsonSerializable(typeof(BracketRerun))]
[JsonSerializable(typeof(ReadingSpoilt))]
[JsonSerializable(typeof(FlagTakenBack))]
[JsonSerializable(typeof(ExtraNoted))]
[JsonSerializable(typeof(RatingGiven))]
[JsonSerializable(typeof(RatingsClosed))]
[JsonSerializable(typeof(ChoiceTrialsPlanned))]
[JsonSerializable(typeof(SlipTaken))]
[JsonSerializable(typeof(ChoiceMade))]
[JsonSerializable(typeof(EnergyLegDriven))]
[JsonSerializable(typeof(LegSpoilt))]
[JsonSerializable(typeof(MarkGiven))]
[JsonSerializable(typeof(ChainNamed))]
[JsonSerializable(typeof(ChainCalibrated))]
[JsonSerializable(typeof(RecordingTaken))]
[JsonSerializable(typeof(LogCompared))]
[JsonSerializable(typeof(RingOpened))]
[JsonSerializable(typeof(PredictionLocked))]
[JsonSerializable(typeof(KeyOpened))]
[JsonSerializable(typeof(MarksReadAgain))]
internal sealed partial class EntryShapes : JsonSerializerContext;
