using System.Globalization;
using FieldSession.State;

namespace FieldSession.Tests.Making;

/// <summary>A short day by commands: two specs, planned and sealed, driven by whatever codes the lot gave.</summary>
internal static class AWholeDay
{
    public const string Plan = """
        study = "T-7"
        question = "Is the candidate louder?"
        specs = 2
        order = "R 1 R 1 R 1"
        crew = ["Ro", "Tam"]
        custodian = "Ilse"
        """;

    public const string Route =
        "segment,kind,speed_kmh,length_m\nMill lane,smooth,80,500\nQuarry road,coarse,60,500\nBridge joint,impact,50,60\n";

    public const string Ready = "calibration before 94.0\nweather air=6 road=5 wind=2 surface=dry\n";

    /// <summary>Plans and seals a study with these specs.</summary>
    public static AtThePrompt Sealed(string specs = "ALPHA\nBETA\n", string plan = Plan, int seed = 1)
    {
        AtThePrompt prompt = Planned(plan, seed);
        prompt.Must(0, ["seal", prompt.Study, "--specs", prompt.Write("specs.txt", specs), "--key", prompt.Here("a.key")]);
        return prompt;
    }

    /// <summary>Plans and seals a study whose key is on paper.</summary>
    public static AtThePrompt OnPaper(string plan = Plan)
    {
        AtThePrompt prompt = Planned(plan, 1);
        prompt.Must(0, ["seal", prompt.Study, "--paper"]);
        return prompt;
    }

    private static AtThePrompt Planned(string plan, int seed)
    {
        AtThePrompt prompt = new(seed);
        prompt.Write("plan/plan.toml", plan);
        prompt.Write("plan/route.csv", Route);
        prompt.Must(0, ["start", prompt.Here("plan"), prompt.Study]);
        return prompt;
    }

    /// <summary>Types lines that must all be taken.</summary>
    public static AtThePrompt Enter(this AtThePrompt prompt, string lines)
    {
        prompt.Must(0, ["enter", prompt.Study], lines);
        return prompt;
    }

    /// <summary>Drives the next runs as the order asks for them; a code of the spec that is louder reads 2 dB more.</summary>
    public static AtThePrompt Drive(this AtThePrompt prompt, int runs, Func<SpecCode, bool>? isLouder = null)
    {
        for (int run = 0; run < runs; run++)
        {
            SpecCode asked = prompt.Now().CodeAsked!.Value;
            double more = (isLouder?.Invoke(asked) == true ? 2 : 0) + (prompt.Now().Runs.Count % 3 * 0.2);
            prompt.Enter($"run {asked}\n{Range(60 + more)}\n{Range(64 + more)}\n{Number(71 + more)}\n");
        }

        return prompt;
    }

    /// <summary>Closes the session and locks a prediction of each, both on one code.</summary>
    public static AtThePrompt Predict(this AtThePrompt prompt, SpecCode feature) =>
        prompt.Enter($"calibration after 94.0\npredict Ro feature={feature} sure=4\npredict Tam feature={feature} sure=80%\n");

    /// <summary>What a key file of the study holds, as the custodian may know it.</summary>
    public static Dictionary<SpecCode, string> SpecsIn(this AtThePrompt prompt, string key) =>
        prompt
            .Outside()
            .KeyFile.Open(prompt.Here(key), "T-7", null, AtThePrompt.Passphrase)
            .Key!.Places.ToDictionary(line => line.Code, line => line.Spec);

    /// <summary>The words of a reveal by key files, the marks read as they are.</summary>
    public static string[] RevealWords(this AtThePrompt prompt, params string[] keys) =>
        [
            "reveal",
            prompt.Study,
            .. keys.Distinct().SelectMany(prompt.SpecsIn).SelectMany(pair => new[] { "--mark", $"{pair.Key}={pair.Value}" }),
            .. keys.SelectMany(key => new[] { "--key", prompt.Here(key) }),
            "--reader",
            "Ro",
            "--reader",
            "Ilse",
        ];

    private static string Range(double low) => $"{Number(low)}-{Number(low + 2)}";

    private static string Number(double level) => level.ToString("0.0", CultureInfo.InvariantCulture);
}
