using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Archiving;

/// <summary>A folder of finished studies of one crew on one loop, made by the commands.</summary>
internal sealed class AnArchive : IDisposable
{
    public const string Route =
        "segment,kind,speed_kmh,length_m\nMill lane,smooth,80,900\nQuarry road,coarse,80,900\nBridge joint,impact,50,60\n";

    public AtThePrompt Prompt { get; } = new();

    public string Folder => Prompt.Here("archive");

    public void Dispose() => Prompt.Dispose();

    /// <summary>Writes a plan folder.</summary>
    public string Plan(string study, string more = "")
    {
        Prompt.Write(
            $"{study}/plan.toml",
            $"study = \"{study}\"\nspecs = 2\norder = \"R 1 1 R\"\ncrew = [\"Ro\", \"Tam\"]\ncustodian = \"Ilse\"\n{more}"
        );
        Prompt.Write($"{study}/route.csv", Route);
        return Prompt.Here(study);
    }

    /// <summary>Drives a study to its opened key.</summary>
    /// <param name="study">Its name.</param>
    /// <param name="scatter">How far its second run of each code lies off, dB.</param>
    public AnArchive Finished(string study, double scatter)
    {
        string path = Prompt.Here($"archive/{study}.study");
        Directory.CreateDirectory(Folder);
        Prompt.Must(ExitCode.Done, ["start", Plan(study), path]);
        string[] codes = Sealed(study, path);
        Prompt.Must(ExitCode.Done, ["enter", path], Driven(codes, scatter));
        Dictionary<FieldSession.State.SpecCode, string> specs = Prompt
            .Outside()
            .KeyFile.Open(Prompt.Here($"{study}/a.key"), study, null, AtThePrompt.Passphrase)
            .Key!.Places.ToDictionary(line => line.Code, line => line.Spec);
        FieldSession.State.SpecCode candidate = specs.First(one => one.Value != "STANDARD").Key;
        Prompt.Must(
            ExitCode.Done,
            ["enter", path],
            $"override doubts read as typed\npredict Ro feature={candidate} sure=4\npredict Tam feature={candidate} sure=3\n"
        );
        Prompt.Must(
            ExitCode.Done,
            [
                "reveal",
                path,
                "--key",
                Prompt.Here($"{study}/a.key"),
                .. specs.SelectMany(one => new[] { "--mark", $"{one.Key}={one.Value}" }),
                "--reader",
                "Ro",
                "--reader",
                "Ilse",
            ]
        );
        return this;
    }

    /// <summary>What orders rest on, without what a folder says of the road and a CSV can't.</summary>
    public static string WithoutRoad(string orders) =>
        string.Join('\n', orders.Split('\n').Where(line => !line.StartsWith("The road is good", StringComparison.Ordinal)));

    /// <summary>Seals a study.</summary>
    public string[] Sealed(string study, string path)
    {
        string specs = Prompt.Write($"{study}/specs.txt", "STANDARD\nSTIFFENED\n");
        Prompt.Must(ExitCode.Done, ["seal", path, "--specs", specs, "--key", Prompt.Here($"{study}/a.key")]);
        return [.. Logbook.Fold(Store.Journaling.ReadStudy.At(path).Lines).Fittings[0].Codes.Select(code => code.Digits)];
    }

    /// <summary>A day's lines.</summary>
    public static string Driven(string[] codes, double scatter)
    {
        string Run(string code, double more) =>
            string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"run {code}\n{60 + more:0.0}-{62 + more:0.0}\n{65 + (more * 0.9):0.0}-{67 + (more * 0.9):0.0}\n{72 + (more * 1.2):0.0}\n"
            );
        return "calibration before 94.0\nweather air=6 road=5 wind=2 "
            + $"surface=dry\n{Run(codes[0], 0)}{Run(codes[1], 1)}{Run(codes[1], 1 + scatter)}{Run(codes[0], scatter)}"
            + "calibration after 94.0\n";
    }
}
