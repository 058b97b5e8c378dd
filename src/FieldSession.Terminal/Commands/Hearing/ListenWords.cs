using System.Globalization;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>What the command 'listen' says: how recordings are, never a level of one.</summary>
internal static class ListenWords
{
    public const string ChainIsOneWord = "--chain: give one word of letters and digits";
    public const string GridIs = "--grid: give segment or none";
    public const string OneFileOnly = "--begun and --run hold for one recording; give one FILE";
    public const string CantBeRead = "there is no such file that can be read; give its path";

    public const string PipeIsReadOnce = "a pipe is read once, a run twice; write it to a file and give that";

    public static string[] TimeForms => ["yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm:ss.f", "yyyy-MM-dd HH:mm"];

    public static string NumberIs(string option, string text, double least, double most) =>
        string.Create(CultureInfo.InvariantCulture, $"{option} {Shown(text)}: give a number from {least} to {most}");

    public static string ZoneIs(string text) => $"--zone {Shown(text)}: give the distance from UTC, such as +01:00";

    public static string TimeIs(string option, string text) => $"{option} {Shown(text)}: give it as \"2026-02-03 09:12:03\"";

    public static string ClockIs(string text) => $"--clock {Shown(text)}: give marks or file";

    public static string TwoForOneRun(int run) => $"run {run} is in two of the files; give one recording for each run; join a split one";

    public static string AnotherIsThere(int run) => $"run {run} has another recording already; --again puts this one in its place";

    /// <summary>The answer, a few lines for each file.</summary>
    public static IEnumerable<string> Of(FileListened[] files, Study study)
    {
        foreach (FileListened file in files.Where(file => file.Facts.Length > 0))
        {
            yield return $"{file.Path}:";
            foreach (RecordingHealth health in RecordingHealth.Of(study).Where(health => file.Runs.Contains(health.Recording.Run)))
            {
                foreach (string line in HealthWords.Of(health))
                {
                    yield return $"  {line}";
                }
            }

            if (!file.Runs.Any())
            {
                yield return $"  {HealthWords.ToneAlone}";
            }

            foreach (string remark in file.Remarks)
            {
                yield return $"  ! {remark}";
            }
        }
    }

    private static string Shown(string text) => Store.Readings.FileProblem.Shown(text);
}
