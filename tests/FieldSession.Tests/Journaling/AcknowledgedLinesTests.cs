using FieldSession.Terminal.Commands;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journaling;

/// <summary>What was acknowledged is written down apart from the study, so that a loss shows which no chain of hashes shows.</summary>
public sealed class AcknowledgedLinesTests : IDisposable
{
    private readonly Folder _folder = new();
    private readonly StringWriter _said = new();
    private readonly string _state;

    public AcknowledgedLinesTests()
    {
        new EndlessDay(_folder).Begin();
        _state = _folder["state"];
    }

    [Fact]
    public void An_end_that_is_cut_off_from_both_files_is_missed_by_verify_and_at_opening()
    {
        Assert.Equal(ExitCode.Done, Run(["enter", _folder.Study], "; one\n; two\n; three\n"));
        Assert.Equal(ExitCode.Done, Run(["verify", _folder.Study]));
        CutBoth(lines: 2);

        Assert.Equal(ExitCode.No, Run(["verify", _folder.Study]));

        Assert.Contains("were acknowledged on this laptop", _said.ToString(), StringComparison.Ordinal);
        Run(["enter", _folder.Study], "; going on\n");
        Assert.Contains("look for a newer copy and merge it", _said.ToString(), StringComparison.Ordinal);
        // what goes on from there does not hide it
        Assert.Equal(ExitCode.No, Run(["verify", _folder.Study]));
    }

    [Fact]
    public void The_newer_copy_that_comes_back_ends_the_alarm_and_so_does_taking_the_file_as_it_is()
    {
        Run(["enter", _folder.Study], "; one\n; two\n");
        byte[] text = File.ReadAllBytes(_folder.Text);
        CutBoth(lines: 1);
        Assert.Equal(ExitCode.No, Run(["verify", _folder.Study]));
        string record = Directory.GetFiles(Path.Combine(_state, "acknowledged")).Single();
        Assert.Contains($"remove {record}", _said.ToString(), StringComparison.Ordinal);

        File.WriteAllBytes(_folder.Text, text);
        Run(["enter", _folder.Study]);
        Assert.Equal(ExitCode.Done, Run(["verify", _folder.Study]));

        CutBoth(lines: 1);
        File.Delete(record);
        Assert.Equal(ExitCode.Done, Run(["verify", _folder.Study]));
    }

    [Fact]
    public void A_copy_in_another_place_and_another_study_of_the_same_name_raise_no_alarm()
    {
        Run(["enter", _folder.Study], "; one\n");
        using Folder elsewhere = new();
        File.Copy(_folder.Study, elsewhere.Study);
        File.Copy(_folder.Text, elsewhere.Text);
        Run(["enter", _folder.Study], "; two\n");
        Assert.Equal(ExitCode.Done, Run(["verify", elsewhere.Study]));

        File.Delete(_folder.Study);
        File.Delete(_folder.Text);
        _folder.Write(3);
        Run(["verify", _folder.Study]);
        Assert.DoesNotContain("were acknowledged on this laptop", _said.ToString(), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _said.Dispose();
        _folder.Dispose();
    }

    private void CutBoth(int lines)
    {
        string[] text = File.ReadAllLines(_folder.Text);
        File.WriteAllText(_folder.Text, string.Concat(text[..^lines].Select(line => $"{line}\n")));
        File.Delete(_folder.Study);
        // the LiteDB file is made again from the text that is left
        _folder.Open().Dispose();
    }

    private int Run(string[] words, string typed = "") =>
        CommandLine.Run(
            words,
            new Surroundings
            {
                Input = new StringReader(typed),
                Output = _said,
                Error = _said,
                Clock = new StoppedClock(),
                Lot = new Sealing.SeededLot(1),
                StateFolder = _state,
            }
        );
}
