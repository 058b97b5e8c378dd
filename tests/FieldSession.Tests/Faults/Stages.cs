using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Store.Sealing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Faults;

/// <summary>How far a day has come when a command is tried.</summary>
internal enum DayStage
{
    Planned,
    Started,
    Ready,
    Driven,
    Predicted,
    PredictedOnPaper,
    Revealed,
}

/// <summary>One short day, kept as it lay on the disk at each stage, so that a command can be tried on copies as often as wanted.</summary>
public sealed class Stages : IDisposable
{
    /// <summary>A spec's name, which nothing but the custodian's files may hold before the reveal.</summary>
    public const string HiddenName = "PALEGREY";

    private readonly string _path = Directory.CreateTempSubdirectory("fieldsession-stages").FullName;

    public Stages()
    {
        using AtThePrompt day = new() { Stretch = Pbkdf2Stretch.Derive };
        day.Write("specs.txt", $"{HiddenName}\nDARKGREY\n");
        day.Write("plan/plan.toml", AWholeDay.Plan);
        day.Write("plan/route.csv", AWholeDay.Route);
        Directory.CreateDirectory(day.Here("secret"));
        day.Must(
            0,
            ["seal", day.Here("plan"), "--specs", day.Here("specs.txt"), "--key", day.Here("a.key"), "--public", day.Here("away.codes")]
        );
        Keep(day, DayStage.Planned);
        day.Must(0, ["start", day.Here("plan"), day.Study]);
        Keep(day, DayStage.Started);
        day.Must(0, ["codes", day.Study, day.Here("away.codes")]);
        Codes = [.. day.Now().Codes];
        day.Enter($"{AWholeDay.Ready}trials {Codes[0]} {Codes[1]} n=6 seg=1 side=two which is louder\n");
        day.Write("legs.csv", $"day,car,code,distance_km,energy_kwh\n1,X,{Codes[0]},200,35.8\n1,Y,{Codes[1]},200,37.0\n");
        Keep(day, DayStage.Ready);
        day.Drive(1).Must(0, ["export", day.Study, "--out", day.Here("tables")]);
        day.Drive(5).Enter("calibration after 94.0\n");
        LayTheOtherLaptop(day);
        LayADamagedCopy(day);
        Keep(day, DayStage.Driven);
        day.Enter($"predict Ro feature={Codes[0]} sure=4\npredict Tam feature={Codes[0]} sure=80%\n");
        Keep(day, DayStage.Predicted);
        RevealWords =
        [
            .. day.RevealWords("a.key")
                .Select(word =>
                    word == day.Study ? "day.study"
                    : word == day.Here("a.key") ? "a.key"
                    : word
                ),
        ];
        MarkWords =
        [
            .. RevealWords.Where((word, i) => word is "--mark" or "--reader" || (i > 0 && RevealWords[i - 1] is "--mark" or "--reader")),
        ];
        day.Must(0, day.RevealWords("a.key"));
        day.Must(0, ["report", day.Study, "--out", day.Here("report")]);
        day.Enter("; after the report\n");
        Keep(day, DayStage.Revealed);
        PaperRevealWords = KeepOnPaper();
    }

    /// <summary>The words of the marks, as two people read them.</summary>
    internal ImmutableArray<string> MarkWords { get; }

    /// <summary>The words of a reveal whose key is on paper.</summary>
    internal ImmutableArray<string> PaperRevealWords { get; }

    /// <summary>The codes that the lot gave.</summary>
    internal ImmutableArray<SpecCode> Codes { get; }

    /// <summary>The words of the reveal.</summary>
    internal ImmutableArray<string> RevealWords { get; }

    /// <summary>Lays a copy of a stage into a new folder.</summary>
    internal ALaidStage Lay(DayStage stage) => new(At(stage));

    public void Dispose() => Directory.Delete(_path, recursive: true);

    private string At(DayStage stage) => Path.Combine(_path, $"{stage}");

    private void Keep(AtThePrompt day, DayStage stage) => ALaidStage.Copy(day.Here("."), At(stage));

    private ImmutableArray<string> KeepOnPaper()
    {
        using AtThePrompt day = AWholeDay
            .OnPaper(AWholeDay.Plan.Replace("T-7", "T-6", StringComparison.Ordinal))
            .Enter(AWholeDay.Ready)
            .Drive(6);
        (SpecCode Code, string Name)[] key = [.. day.Now().Codes.Zip([HiddenName, "DARKGREY"])];
        day.Predict(key[0].Code);
        Keep(day, DayStage.PredictedOnPaper);
        string[] words =
        [
            "reveal",
            "day.study",
            .. key.SelectMany(line => new[] { "--paper", $"{line.Code}={line.Name}", "--mark", $"{line.Code}={line.Name}" }),
            "--control",
            HiddenName,
            "--reader",
            "Ro",
            "--reader",
            "Ilse",
        ];
        // a finished day of the same crew and loop, for the archive of the day that is ready
        day.Must(0, [.. words.Select(word => word == "day.study" ? day.Study : word)]);
        Directory.CreateDirectory(Path.Combine(At(DayStage.Ready), "past"));
        File.Copy(day.Study, Path.Combine(At(DayStage.Ready), "past", "day.study"));
        File.Copy(day.Here("day.journal"), Path.Combine(At(DayStage.Ready), "past", "day.journal"));
        return [.. words];
    }

    private static void LayTheOtherLaptop(AtThePrompt day)
    {
        Directory.CreateDirectory(day.Here("other"));
        using StudyFile study = StudyFile.Open(day.Study, day.Clock);
        study.CopyTo(day.Here("other"));
        using StudyFile other = StudyFile.Open(Path.Combine(day.Here("other"), "day.study"), day.Clock);
        Logbook there = Logbook.Open(other, day.Clock, "00000000000000bb");
        for (int note = 1; note <= 6; note++)
        {
            Assert.True(there.Write($"; from the other laptop {note}").IsWritten);
        }
    }

    // lines are lost in both copies
    private static void LayADamagedCopy(AtThePrompt day)
    {
        string[] lines = File.ReadAllLines(day.Here("day.journal"));
        day.Write("damaged/day.journal", string.Concat(lines.Where((_, i) => i != 9).Select(line => $"{line}\n")));
    }
}

/// <summary>A copy of a stage in a folder of its own, gone afterwards.</summary>
internal sealed class ALaidStage : IDisposable
{
    private readonly string _whole = Directory.CreateTempSubdirectory("fieldsession-fault").FullName;

    public ALaidStage(string from) => Copy(from, Path);

    /// <summary>Where the command is called.</summary>
    public string Path => System.IO.Path.Combine(_whole, "day");

    /// <summary>Where the calls are written down, outside the folder that is looked at.</summary>
    public string Record => System.IO.Path.Combine(_whole, "calls");

    /// <summary>A file of the folder.</summary>
    public string Here(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Every file below a folder of the stage, with its bytes.</summary>
    public Dictionary<string, string> Files(string below = "") =>
        !Directory.Exists(Here(below))
            ? []
            : Directory
                .GetFiles(Here(below), "*", SearchOption.AllDirectories)
                .ToDictionary(file => System.IO.Path.GetRelativePath(Path, file), file => Convert.ToBase64String(File.ReadAllBytes(file)));

    public void Dispose() => Directory.Delete(_whole, recursive: true);

    public static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (string file in Directory.GetFiles(from))
        {
            File.Copy(file, System.IO.Path.Combine(to, System.IO.Path.GetFileName(file)));
        }

        foreach (string folder in Directory.GetDirectories(from))
        {
            Copy(folder, System.IO.Path.Combine(to, System.IO.Path.GetFileName(folder)));
        }
    }
}
