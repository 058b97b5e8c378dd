using System.Text.Json;
using FieldSession.Store.Archiving;
using FieldSession.Terminal.Commands;

namespace FieldSession.Tests.Archiving;

/// <summary>Backups in an archive folder, two studies of one name, and the way of an archive into a CSV and back.</summary>
public sealed class CopiesChangeNothingTests : IDisposable
{
    private readonly AnArchive _archive = new();

    public void Dispose() => _archive.Dispose();

    [Fact]
    public void Backups_in_the_folder_change_no_figure_of_the_archive_the_score_or_the_next_day()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string[] before = Figures("none");
        CopyInto("backup", 1);
        Assert.Equal(before, Figures("one"));
        Must("archive", _archive.Folder);
        Assert.Contains("counts once; ", _archive.Prompt.Said, StringComparison.Ordinal);
        CopyInto("backup", 300);
        Assert.Equal(before, Figures("three-hundred"));
        Assert.Contains("2 studies, 2 finished", Must("archive", _archive.Folder));
    }

    [Fact]
    public void An_earlier_state_counts_as_the_finished_study_and_copies_that_went_on_differently_wait_for_a_merge()
    {
        _archive.Finished("AR-1", 0.6);
        string study = _archive.Prompt.Here("archive/AR-1.study");
        string[] lines = File.ReadAllLines(Path.ChangeExtension(study, ".journal"));
        _archive.Prompt.Write("archive/early.journal", string.Concat(lines[..12].Select(line => line + "\n")));
        _archive.Prompt.Must(ExitCode.Done, ["enter", _archive.Prompt.Here("archive/early.study")], "");
        Assert.Contains("1 studies, 1 finished", Must("archive", _archive.Folder));

        _archive.Prompt.Must(ExitCode.Done, ["enter", _archive.Prompt.Here("archive/early.study")], "; written on in another place\n");
        _archive.Prompt.Must(ExitCode.No, ["archive", _archive.Folder]);
        Assert.Contains("0 studies, 0 finished", _archive.Prompt.Said, StringComparison.Ordinal);
        Assert.Contains("went on differently", _archive.Prompt.Said, StringComparison.Ordinal);
        _archive.Prompt.Must(ExitCode.No, ["score", study, _archive.Prompt.Here("archive/early.study")]);

        Must("merge", study, _archive.Prompt.Here("archive/early.study"));
        Assert.Contains("1 studies, 1 finished", Must("archive", _archive.Folder));
    }

    [Fact]
    public void Two_studies_of_one_name_are_two_days_told_apart_by_date_and_hash()
    {
        _archive.Finished("AR-1", 0.6);
        Directory.CreateDirectory(_archive.Prompt.Here("archive/other"));
        foreach (string file in Directory.GetFiles(_archive.Folder, "AR-1.*"))
        {
            File.Move(file, _archive.Prompt.Here($"archive/other/{Path.GetFileName(file)}"));
        }

        Directory.Delete(_archive.Prompt.Here("AR-1"), recursive: true);
        _archive.Finished("AR-1", 1.0);
        string said = Must("archive", _archive.Folder);
        Assert.Contains("2 studies, 2 finished", said);
        string[] rows = [.. said.Split('\n').Where(line => line.Contains("  AR-1 ", StringComparison.Ordinal))];
        Assert.Equal(2, rows.Select(row => row.Split("  ")[1]).Distinct().Count());
        string csv = _archive.Prompt.Write("archive.csv", Must("archive", _archive.Folder, "--csv"));
        Must("start", _archive.Plan("AR-9", $"archive = \"{csv}\"\n"), _archive.Prompt.Here("next.study"));
        Assert.Contains("the repeatability of 2 earlier days is taken", _archive.Prompt.Said);
    }

    [Fact]
    public void What_the_archive_writes_as_csv_a_plan_takes_as_it_takes_the_folder_and_the_same_day_enters_once()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string csv = _archive.Prompt.Write("archive.csv", Must("archive", _archive.Folder, "--csv"));
        Assert.Equal(
            AnArchive.WithoutRoad(Must("orders", _archive.Plan("AR-8", $"archive = \"{_archive.Folder}\"\n"))),
            Must("orders", _archive.Plan("AR-8", $"archive = \"{csv}\"\n"))
        );

        string other = _archive.Prompt.Write(
            "other-crew.csv",
            File.ReadAllText(csv).Replace("Ro, Tam", "Ro, Una", StringComparison.Ordinal)
        );
        Assert.Contains("Assumed, not measured", Must("orders", _archive.Plan("AR-8", $"archive = \"{other}\"\n")));

        string[] lines = File.ReadAllLines(csv);
        string twice = _archive.Prompt.Write(
            "twice.csv",
            string.Join('\n', [.. lines, lines[1].Replace("AR-1", "AR-1 again", StringComparison.Ordinal)])
        );
        _archive.Prompt.Must(ExitCode.Wrong, ["compare", _archive.Prompt.Here("archive/AR-1.study"), "--archive", twice]);
        Assert.Contains("this day has a line for all already", _archive.Prompt.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_study_never_lends_to_itself()
    {
        // three degrees of freedom are lent, two are not
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 0.7);
        string csv = _archive.Prompt.Write("archive.csv", Must("archive", _archive.Folder, "--csv"));
        string study = _archive.Prompt.Here("archive/AR-1.study");
        Assert.Equal(Overall(Must("compare", study, "--json")), Overall(Must("compare", study, "--archive", csv, "--json")));
        string named = _archive.Prompt.Write(
            "by-name.csv",
            string.Join('\n', File.ReadAllLines(csv).Select(line => string.Join(',', line.Split(',')[..7])))
        );
        Assert.NotEqual(Overall(Must("compare", study, "--json")), Overall(Must("compare", study, "--archive", named, "--json")));
    }

    private string[] Figures(string next)
    {
        string path = _archive.Prompt.Here($"{next}.study");
        Must("start", _archive.Plan(next, $"archive = \"{_archive.Folder}\"\n"), path);
        _archive.Prompt.Must(ExitCode.Done, ["enter", path], AnArchive.Driven(_archive.Sealed(next, path), 0.7));
        string[] files = Directory.GetFiles(_archive.Folder, "*.study", SearchOption.AllDirectories);
        string score = Must(["score", .. files.Order(StringComparer.Ordinal)]);
        return
        [
            ArchiveJson.Of([.. ArchiveFolder.Read(_archive.Folder).Studies]),
            string.Join('\n', score.Split('\n').Where(line => !line.StartsWith("AR-", StringComparison.Ordinal))),
            Overall(Must("compare", path, "--json")),
        ];
    }

    private void CopyInto(string folder, int copies)
    {
        for (int i = 1; i <= copies; i++)
        {
            string target = Directory.CreateDirectory(_archive.Prompt.Here($"archive/{folder}/{i}")).FullName;
            foreach (string file in Directory.GetFiles(_archive.Folder, "AR-*"))
            {
                File.Copy(file, Path.Combine(target, Path.GetFileName(file)), overwrite: true);
            }
        }
    }

    private string Must(params string[] words) => _archive.Prompt.Must(ExitCode.Done, words);

    // the digits of the codes are drawn by lot
    private static string Overall(string json) =>
        JsonDocument
            .Parse(json)
            .RootElement.GetProperty("comparisons")[0]
            .GetProperty("classes")
            .GetProperty("steady")
            .GetProperty("overall")
            .GetRawText();
}
