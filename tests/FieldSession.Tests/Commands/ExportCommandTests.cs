using FieldSession.Planning;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Commands;

public sealed class ExportCommandTests : IDisposable
{
    private readonly Folder _folder = new();
    private readonly StringWriter _output = new();
    private readonly StringWriter _error = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_files_written_are_printed_one_a_line()
    {
        int code = Run("out");
        string[] printed = _output.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal((ExitCode.Done, ""), (code, _error.ToString()));
        Assert.All(printed, path => Assert.True(File.Exists(path), path));
        Assert.Equal(Directory.GetFiles(_folder["out"]).Order(StringComparer.Ordinal), printed.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_wrong_input()
    {
        File.WriteAllText(_folder["out"], "mine");
        Assert.Equal(ExitCode.Wrong, Run("out"));
        Assert.Equal($"--out {_folder["out"]}: this is a file; give a folder to write into", _error.ToString().Trim());
        Assert.Equal("mine", File.ReadAllText(_folder["out"]));
    }

    [Fact]
    public void Stopped_it_says_so_and_leaves_nothing_behind()
    {
        Assert.Equal(ExitCode.No, Run("out", new CancellationToken(canceled: true)));
        Assert.Equal("", _output.ToString());
        Assert.Equal($"{_folder["out"]}: stopped; nothing was changed there", _error.ToString().Trim());
        Assert.False(Directory.Exists(_folder["out"]));
        Assert.Empty(Directory.GetDirectories(_folder.Path));
    }

    [Fact]
    public void The_command_line_knows_it()
    {
        MakeStudy();
        Assert.Equal(ExitCode.Done, CommandLine.Run(["export", _folder.Study, "--out", _folder["out"]], Outside));
        Assert.Contains("readings.csv", _output.ToString(), StringComparison.Ordinal);
    }

    private Surroundings Outside =>
        new()
        {
            Input = TextReader.Null,
            Output = _output,
            Error = _error,
            Clock = new StoppedClock(),
            Lot = new SeededLot(1),
        };

    private int Run(string folder, CancellationToken stop = default)
    {
        MakeStudy();
        return ExportCommand.Run(_folder.Study, _folder[folder], Outside, stop);
    }

    private void MakeStudy()
    {
        using StudyFile file = StudyFile.Create(_folder.Study, new StoppedClock());
        Assert.True(Logbook.Open(file, new StoppedClock(), "00000000000000aa").Write(new PlanMade(ADay.ShortPlan)).IsWritten);
    }
}
