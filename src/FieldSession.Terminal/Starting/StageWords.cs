namespace FieldSession.Terminal.Starting;

/// <summary>What is said of how far a study has come.</summary>
internal static class StageWords
{
    public const string KeyIsOpen = "the key is open";
    public const string TheReport = "the report";
    public const string Planned = "planned";
    public const string SealThenTakeCodes = "the custodian seals the key, the crew takes the codes";
    public const string CodesAreIn = "the codes are in";
    public const string ReviewThenPredict = "the blind review, then the predictions";
    public const string AllPredicted = "all predictions are locked";
    public const string OpenTheKey = "open the key with the custodian";
    public const string Empty = "empty";

    public static string Of(string name, DayAhead ahead) => $"{name}: {ahead.Done}; next: {ahead.Next}";

    public static string Driven(int driven, int planned) => driven == 0 ? "no run is finished yet" : $"{driven} of {planned} runs driven";

    public static string AllDriven(int planned) => $"all {planned} runs driven";

    public static string FinishRun(int run) => $"finish run {run}";

    public static string DriveRun(int run) => $"run {run}";

    public static string BeforeRun(int run, string missing) => $"run {run}, but {missing}";

    public static string PredictionsMissing(IReadOnlyList<string> names) => names.Count == 1 ? $"the prediction of {names[0]}" : $"the predictions of {string.Join(" and ", names)}";
}
