using FieldSession.Terminal.Commands;
using FieldSession.Terminal.Starting;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Journeys;

/// <summary>The program without words: what was opened last, and what can be begun.</summary>
public sealed class StartingByKeysTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-start").FullName;
    private readonly List<StartChoice> _chosen = [];

    private string State => Path.Combine(_folder, "state");

    private Surroundings Outside =>
        new()
        {
            Input = TextReader.Null,
            Output = TextWriter.Null,
            Error = new StringWriter(),
            Clock = new StoppedClock(),
            Lot = new SeededLot(3),
            StateFolder = State,
        };

    [Theory]
    [InlineData("<Enter>", "Study", "one.study")]
    [InlineData("<CursorDown><Enter>", "Study", "two.study")]
    [InlineData("<CursorUp><Enter>", "Study", "two.study")]
    [InlineData("2<Enter>", "Study", "two.study")]
    [InlineData("demo<Enter>", "Demo", "")]
    [InlineData("plan a/new folder<Enter>", "Planning", "a/new folder")]
    [InlineData("else/where.study<Enter>", "Study", "else/where.study")]
    [InlineData("nonsense<Esc><Enter>", "Study", "one.study")]
    public void A_few_keys_open_what_was_chosen(string keys, string kind, string path)
    {
        using StartTui tui = new(Two(null));
        Assert.True(tui.Keys(keys).HasEnded);
        Assert.Equal(new StartChoice(Enum.Parse<StartKind>(kind), path), Assert.Single(_chosen));
    }

    [Fact]
    public void What_can_t_be_opened_is_said_and_the_screen_stays()
    {
        using StartTui tui = new(Two("two.study: the study is open in another window"));
        Assert.Contains("open in another window", tui.Keys("2<Enter>").Screen, StringComparison.Ordinal);
        Assert.False(tui.HasEnded);
        Assert.True(tui.Keys("<Ctrl+Q>").HasEnded);
    }

    [Fact]
    public void A_plan_folder_makes_its_study_beside_the_plan_and_opens_it()
    {
        string plan = Path.Combine(_folder, "quillmere");
        Directory.CreateDirectory(plan);
        foreach (string name in new[] { "plan.toml", "route.csv" })
        {
            File.Copy(Path.Combine(Repository.Root, "demo", "quillmere", name), Path.Combine(plan, name));
        }

        (OpenedStudy? opened, string? refusal) = StartScreen.Opened(new StartChoice(StartKind.Plan, plan), Outside);
        Assert.Null(refusal);
        using (opened)
        {
            Assert.Equal("QW-0114", opened!.Logbook.Study.Plan!.StudyName);
        }

        Assert.True(File.Exists(Path.Combine(plan, "QW-0114.study")));
        string study = Path.Combine(plan, "QW-0114.study");
        Assert.Equal(
            "QW-0114: planned; next: the custodian seals the key, the crew takes the codes",
            RecentStudies.At([study]).Single().Words
        );
        File.Copy(Path.ChangeExtension(study, ".journal"), Path.Combine(_folder, "backup.journal"));
        string second = Path.Combine(_folder, "second.study");
        Assert.Equal(ExitCode.Done, StartCommand.Run(plan, second, Outside));
        string[] words = [.. RecentStudies.At([study, Path.Combine(_folder, "backup.study"), second]).Select(recent => recent.Words)];
        Assert.EndsWith("; same study as 1", words[1], StringComparison.Ordinal);
        Assert.Matches("; begun [0-9-]{10}, [0-9a-f]{8}$", words[0]);
        Assert.Matches("; begun [0-9-]{10}, [0-9a-f]{8}$", words[2]);
        Assert.NotNull(StartScreen.Opened(new StartChoice(StartKind.Plan, plan), Outside).Refusal);
    }

    [Fact]
    public void A_folder_without_a_plan_and_a_file_that_is_not_there_are_refused_in_words()
    {
        Assert.Contains(
            "plan.toml",
            StartScreen.Opened(new StartChoice(StartKind.Plan, _folder), Outside).Refusal,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "no.study",
            StartScreen.Opened(new StartChoice(StartKind.Study, Path.Combine(_folder, "no.study")), Outside).Refusal,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_newest_study_is_first_and_no_more_than_five_are_remembered()
    {
        RecentFile recent = new(State);
        foreach (string name in new[] { "a", "b", "c", "d", "e", "f", "b" })
        {
            recent.Remember(Path.Combine(_folder, name));
        }

        Assert.Equal(["b", "f", "e", "d", "c"], recent.Paths.Select(path => Path.GetFileName(path)));
    }

    [Fact]
    public void A_state_folder_that_can_t_be_written_costs_nothing_but_the_memory()
    {
        File.WriteAllText(State, "a file where the folder should be");
        RecentFile recent = new(State);
        recent.Remember("a.study");
        Assert.Empty(recent.Paths);
        Assert.Empty(new RecentFile(null).Paths);
    }

    [Fact]
    public void Without_words_and_without_a_terminal_the_commands_are_listed_and_the_exit_code_is_2()
    {
        Surroundings outside = Outside;
        Assert.Equal(ExitCode.Wrong, CommandLine.Run([], outside));
        Assert.Contains("drive", outside.Error.ToString(), StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private StartDesk Two(string? refusal) =>
        new()
        {
            Recent = [new("one.study", "T-1: sealed"), new("two.study", "T-2: planned")],
            Open = choice =>
            {
                _chosen.Add(choice);
                return refusal;
            },
        };
}
