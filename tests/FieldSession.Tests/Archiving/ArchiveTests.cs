using System.Text.Json;
using FieldSession.Archiving;
using FieldSession.Store.Archiving;
using FieldSession.Terminal;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Archiving;

/// <summary>A crew's finished studies say how well it repeats, and lend that to a day that asked for it before run 1.</summary>
public sealed class ArchiveTests : IDisposable
{
    private readonly AnArchive _archive = new();

    public void Dispose() => _archive.Dispose();

    [Fact]
    public void A_folder_is_listed_summed_up_and_its_predictions_are_scored_together()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string said = Must("archive", _archive.Folder);
        Assert.Contains("2 studies, 2 finished", said);
        Assert.Contains("steady: run", said);
        Assert.Contains("coarse: run", said);
        Assert.Contains("Ro, Tam, steady", said);
        Assert.True(said.Contains("4 of 4 right", StringComparison.Ordinal), said);
        ArchiveSum steady = ArchiveSum
            .Of(ArchiveFolder.Read(_archive.Folder).Studies)
            .First(sum => sum is { By: "class", Group: "steady" });
        Assert.Equal((2, 4.0), (steady.Studies, steady.NuRun));
        Assert.InRange(steady.RunSdDb!.Value, 0.3, 0.7);
    }

    [Fact]
    public void The_index_can_be_thrown_away_and_is_made_again_with_the_same_answer()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string index = Path.Combine(_archive.Folder, "archive-index.json");
        Assert.Equal(2, ArchiveFolder.Read(_archive.Folder).ReadAgain);
        string first = Must("archive", _archive.Folder, "--csv");
        Assert.Equal(0, ArchiveFolder.Read(_archive.Folder).ReadAgain);
        byte[] kept = File.ReadAllBytes(index);
        File.Delete(index);
        Assert.Equal(2, ArchiveFolder.Read(_archive.Folder).ReadAgain);
        Assert.Equal(kept, File.ReadAllBytes(index));
        File.WriteAllText(index, "{ rubbish");
        Assert.Equal(first, Must("archive", _archive.Folder, "--csv"));
        Assert.DoesNotContain("STANDARD", File.ReadAllText(index));
    }

    [Fact]
    public void A_study_that_can_not_be_read_is_named_and_left_out()
    {
        _archive.Finished("AR-1", 0.6);
        File.WriteAllText(Path.Combine(_archive.Folder, "broken.study"), "no study");
        _archive.Prompt.Must(ExitCode.No, ["archive", _archive.Folder]);
        Assert.Contains("broken.study: left out", _archive.Prompt.Said);
        Assert.Contains("1 studies, 1 finished", _archive.Prompt.Said);
        _archive.Prompt.Must(ExitCode.Wrong, ["archive", _archive.Prompt.Here("nowhere")]);
        _archive.Prompt.Must(ExitCode.Wrong, ["archive", _archive.Folder, "--since", "yesterday"]);
    }

    [Fact]
    public void A_plan_that_asks_for_its_archive_has_the_prior_of_its_csv_and_no_later_archive_changes_it()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string csv = _archive.Prompt.Write("archive.csv", Must("archive", _archive.Folder, "--csv"));
        string asked = _archive.Prompt.Here("asked.study");
        Must("start", _archive.Plan("AR-9", $"archive = \"{_archive.Folder}\"\n"), asked);
        Assert.Contains("the repeatability of 2 earlier days is taken", _archive.Prompt.Said);
        string plain = _archive.Prompt.Here("plain.study");
        Must("start", _archive.Plan("AR-8"), plain);
        foreach (string study in new[] { asked, plain })
        {
            string[] codes = _archive.Sealed(study == asked ? "AR-9" : "AR-8", study);
            _archive.Prompt.Must(ExitCode.Done, ["enter", study], AnArchive.Driven(codes, 0.7));
        }

        _archive.Finished("AR-3", 3.0);
        JsonElement own = Steady(Must("compare", asked, "--json"));
        Assert.True(own.GetProperty("prior_used").GetBoolean());
        Assert.Equal(
            own.GetProperty("overall").GetRawText(),
            Steady(Must("compare", plain, "--archive", csv, "--json")).GetProperty("overall").GetRawText()
        );
        Assert.False(Steady(Must("compare", plain, "--json")).GetProperty("prior_used").GetBoolean());
        Assert.Contains("the plan did not ask for", Must("compare", plain, "--archive", csv));
    }

    [Fact]
    public void A_day_is_planned_from_the_archive()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string csv = _archive.Prompt.Write("archive.csv", Must("archive", _archive.Folder, "--csv"));
        ArchiveSum steady = ArchiveSum
            .Of(ArchiveFolder.Read(_archive.Folder).Studies)
            .First(sum => sum is { By: "class", Group: "steady" });
        StringWriter one = new();
        StringWriter other = new();
        Assert.Equal(ExitCode.Done, SizeCommand.Run(one, one, new AskedSize(Archive: csv, Segments: "2")));
        Assert.Equal(
            ExitCode.Done,
            SizeCommand.Run(other, other, new AskedSize(RunSd: $"{steady.RunSdDb:R}", ReadingSd: $"{steady.ReadingSdDb:R}", Segments: "2"))
        );
        Assert.Equal(other.ToString(), one.ToString());
        Assert.DoesNotContain("assumed", one.ToString());
    }

    [Fact]
    public void The_archive_tells_other_programs_its_studies_its_repeatability_and_its_predictions()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        using JsonDocument json = JsonDocument.Parse(Must("archive", _archive.Folder, "--json"));
        Assert.Equal(
            ["AR-1", "AR-2"],
            json.RootElement.GetProperty("studies").EnumerateArray().Select(study => study.GetProperty("study").GetString())
        );
        ArchiveSum steady = ArchiveSum
            .Of(ArchiveFolder.Read(_archive.Folder).Studies)
            .First(sum => sum is { By: "class", Group: "steady" });
        JsonElement told = json
            .RootElement.GetProperty("repeatability")
            .EnumerateArray()
            .First(sum => sum.GetProperty("group").GetString() == "steady");
        Assert.Equal((steady.RunSdDb, steady.NuRun), (told.GetProperty("run_sd").GetDouble(), told.GetProperty("nu_run").GetDouble()));
        Assert.Equal(
            (4, 4),
            (
                json.RootElement.GetProperty("predictions").GetProperty("count").GetInt32(),
                json.RootElement.GetProperty("predictions").GetProperty("hits").GetInt32()
            )
        );
    }

    [Fact]
    public void Orders_are_judged_by_the_archive_that_the_plan_names()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string csv = _archive.Prompt.Write("archive.csv", Must("archive", _archive.Folder, "--csv"));
        string asks = _archive.Plan("AR-9", $"archive = \"{_archive.Folder}\"\n");
        string told = Must("orders", asks);
        Assert.Contains("Known from 2 earlier days", told);
        Assert.Equal(Must("orders", _archive.Plan("AR-8"), "--archive", csv), AnArchive.WithoutRoad(told));
        Assert.Contains("Assumed, not measured", Must("orders", _archive.Plan("AR-8")));

        ADay day = new();
        EditedPlan plan = new(asks, found => ArchiveCommand.LentTo(asks, found, _archive.Prompt.Outside()));
        using Tui tui = new(day.Book, day.Clock, desk => desk with { PlanTable = plan }, screen: ScreenName.Plan);
        tui.Keys("<Ctrl+O>");
        Assert.Contains("Known from 2 earlier days: runs repeat within", tui.Screen.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void After_run_1_nothing_is_taken_from_the_archive_any_more()
    {
        _archive.Finished("AR-1", 0.6);
        string late = _archive.Prompt.Here("late.study");
        Must("start", _archive.Plan("AR-7"), late);
        string[] codes = _archive.Sealed("AR-7", late);
        _archive.Prompt.Must(ExitCode.Done, ["enter", late], AnArchive.Driven(codes, 0.2));
        _archive.Prompt.Must(ExitCode.No, ["archive", _archive.Folder, "--for", late]);
        Assert.Contains("run 1 has begun", _archive.Prompt.Said);
    }

    [Fact]
    public void A_day_that_is_rougher_than_the_archive_does_not_borrow_from_it()
    {
        _archive.Finished("AR-1", 0.2).Finished("AR-2", 0.3);
        string rough = _archive.Prompt.Here("rough.study");
        Must("start", _archive.Plan("AR-6", $"archive = \"{_archive.Folder}\"\n"), rough);
        string[] codes = _archive.Sealed("AR-6", rough);
        _archive.Prompt.Must(ExitCode.Done, ["enter", rough], AnArchive.Driven(codes, 4));
        Assert.False(Steady(Must("compare", rough, "--json")).GetProperty("prior_used").GetBoolean());
        Assert.Contains("today is rougher than the archive", Must("compare", rough));
    }

    private string Must(params string[] words) => _archive.Prompt.Must(ExitCode.Done, words);

    private static JsonElement Steady(string json) =>
        JsonDocument.Parse(json).RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady");
}
