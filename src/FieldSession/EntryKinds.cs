using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using FieldSession.Journal;

namespace FieldSession;

/// <summary>
/// Contents page 1: every kind of entry, in the order of the job, with its name and version on disk. A name is never
/// used again for something else; members are added, never given another meaning.
/// </summary>
public static class EntryKinds
{
    /// <summary>Name of the kind by which a laptop takes note of the others' lines.</summary>
    public const string Joined = "joined";

    /// <summary>Every kind.</summary>
    public static ImmutableArray<EntryKind> All { get; } =
    [
        EntryKind.Of("plan", EntryShapes.Default.PlanMade),
        EntryKind.Of("amended", EntryShapes.Default.PlanAmended),
        EntryKind.Of("archive", EntryShapes.Default.ArchiveTaken),
        EntryKind.Of(Joined, EntryShapes.Default.StrandJoined),
        EntryKind.Of("settled", EntryShapes.Default.ConflictSettled),
        EntryKind.Of("sealed", EntryShapes.Default.SpecsSealed),
        EntryKind.Of("calibration", EntryShapes.Default.CalibrationChecked),
        EntryKind.Of("weather", EntryShapes.Default.WeatherNoted),
        EntryKind.Of("check", EntryShapes.Default.CheckTyped),
        EntryKind.Of("override", EntryShapes.Default.CheckOverridden),
        EntryKind.Of("run", EntryShapes.Default.RunStarted),
        EntryKind.Of("reading", EntryShapes.Default.ReadingTaken),
        EntryKind.Of("missed", EntryShapes.Default.SegmentMissed),
        EntryKind.Of("segment", EntryShapes.Default.SegmentChosen),
        EntryKind.Of("end", EntryShapes.Default.RunEnded),
        EntryKind.Of("aborted", EntryShapes.Default.AbortExplained),
        EntryKind.Of("undo", EntryShapes.Default.ActUndone),
        EntryKind.Of("letters", EntryShapes.Default.LettersTakenBack),
        EntryKind.Of("note", EntryShapes.Default.NoteMade),
        EntryKind.Of("speaker", EntryShapes.Default.NoteAttributed),
        EntryKind.Of("confirmed", EntryShapes.Default.ReadingConfirmed),
        EntryKind.Of("corrected", EntryShapes.Default.ReadingCorrected),
        EntryKind.Of("filled", EntryShapes.Default.ReadingFilled),
        EntryKind.Of("shift", EntryShapes.Default.RunShifted),
        EntryKind.Of("rerun", EntryShapes.Default.BracketRerun),
        EntryKind.Of("spoilt", EntryShapes.Default.ReadingSpoilt),
        EntryKind.Of("clean", EntryShapes.Default.FlagTakenBack),
        EntryKind.Of("extra", EntryShapes.Default.ExtraNoted),
        EntryKind.Of("rating", EntryShapes.Default.RatingGiven),
        EntryKind.Of("ratings-closed", EntryShapes.Default.RatingsClosed),
        EntryKind.Of("trials", EntryShapes.Default.ChoiceTrialsPlanned),
        EntryKind.Of("slip", EntryShapes.Default.SlipTaken),
        EntryKind.Of("choice", EntryShapes.Default.ChoiceMade),
        EntryKind.Of("leg", EntryShapes.Default.EnergyLegDriven),
        EntryKind.Of("leg-spoilt", EntryShapes.Default.LegSpoilt),
        EntryKind.Of("mark", EntryShapes.Default.MarkGiven),
        EntryKind.Of("chain", EntryShapes.Default.ChainNamed),
        EntryKind.Of("gain", EntryShapes.Default.ChainCalibrated),
        EntryKind.Of("recording", EntryShapes.Default.RecordingTaken),
        EntryKind.Of("log", EntryShapes.Default.LogCompared),
        EntryKind.Of("ring-opened", EntryShapes.Default.RingOpened),
        EntryKind.Of("prediction", EntryShapes.Default.PredictionLocked),
        EntryKind.Of("opened", EntryShapes.Default.KeyOpened),
        EntryKind.Of("marks", EntryShapes.Default.MarksReadAgain),
    ];

    private static ImmutableDictionary<Type, EntryKind> ByType { get; } = All.ToImmutableDictionary(k => k.Type);

    private static ImmutableDictionary<string, EntryKind> ByName { get; } = All.ToImmutableDictionary(k => k.Name);

    /// <summary>The kind of an entry.</summary>
    /// <exception cref="KeyNotFoundException">The entry's type is on no line of the contents page.</exception>
    public static EntryKind Of(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return ByType[entry.GetType()];
    }

    /// <summary>
    /// The entry that a line holds; one of an unknown kind or version comes back as <see cref="EntryByNewerProgram"/>, and so does one with
    /// a member that this program does not know, since what it adds may change what the rest means.
    /// </summary>
    public static Entry EntryIn(Line line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (!ByName.TryGetValue(line.Kind, out EntryKind? kind) || kind.Version < line.Version)
        {
            return new EntryByNewerProgram(line.Kind, line.Version);
        }

        try
        {
            return kind.Read(line);
        }
        catch (JsonException) when (kind.HasMoreIn(line))
        {
            return new EntryByNewerProgram(line.Kind, line.Version);
        }
    }
}

/// <summary>A kind of entry: its name on disk, its version, and how it is written and read.</summary>
/// <param name="Name">Name on disk.</param>
/// <param name="Version">Version written.</param>
/// <param name="Type">The record that holds it.</param>
/// <param name="Shape">How its members are in JSON.</param>
public sealed record EntryKind(string Name, int Version, Type Type, JsonTypeInfo Shape)
{
    /// <summary>A kind in its first version.</summary>
    public static EntryKind Of<T>(string name, JsonTypeInfo<T> shape)
        where T : Entry => new(name, 1, typeof(T), shape);

    /// <summary>The next line of a strand, holding an entry of this kind.</summary>
    public Line Write(Entry entry, int number, string previousHash, DateTimeOffset at, string strand) =>
        Line.Make(number, previousHash, at, strand, Name, Version, json => JsonSerializer.Serialize(json, entry, Shape));

    /// <summary>Whether a line that can't be read is one of this kind all the same, with members that this program does not know.</summary>
    internal bool HasMoreIn(Line line)
    {
        try
        {
            return JsonSerializer.Deserialize(line.Body, WithMore.Shapes.GetTypeInfo(Type)!) is not null;
        }
        catch (Exception broken) when (broken is JsonException or NotSupportedException or ArgumentException)
        {
            return false;
        }
    }

    /// <summary>The entry that a line of this kind holds.</summary>
    /// <exception cref="JsonException">The body does not have the shape of the kind.</exception>
    public Entry Read(Line line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return (Entry?)JsonSerializer.Deserialize(line.Body, Shape) ?? throw new JsonException(LogbookWords.LineHasNoBody(line));
    }

    // in a class of its own: made for the first line that can't be read, and not at the start of every command
    private static class WithMore
    {
        public static readonly EntryShapes Shapes = new(
            new JsonSerializerOptions(EntryShapes.Default.Options) { UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip }
        );
    }
}
