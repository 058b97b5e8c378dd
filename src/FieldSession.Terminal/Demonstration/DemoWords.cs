using FieldSession.Journal;

namespace FieldSession.Terminal.Demonstration;

/// <summary>What the demo says.</summary>
internal static class DemoWords
{
    public static string PlanIsWrong(string problems) => $"the demo's plan is wrong: {problems}";

    public static string LineNotTaken(string line, Outcome outcome) => $"the demo's line '{line}' was not taken: {ShellWords.NotWritten(outcome)}";

    public static string SpecListIsWrong(Objection? refusal) => $"the demo's spec list is wrong: {refusal}";

    public static string MakesRecordings(string folder) => $"making the recordings of the runs in {folder}; it takes a while";

    public static string FileNotInProgram(string name) => $"the demo file {name} is not in the program";

    public static string WhereDemoLies(string folder, string passphrase) => $"the demo is in {folder}; its key file opens with the passphrase '{passphrase}'";
}
