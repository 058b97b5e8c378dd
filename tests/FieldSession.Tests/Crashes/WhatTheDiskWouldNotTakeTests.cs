using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// Acts that the disk would not take: they are kept in memory and in a second place, said, and can be typed in from there.
/// </summary>
public sealed class WhatTheDiskWouldNotTakeTests : IDisposable
{
    private readonly Folder _folder = new();
    private readonly MemoryJournal _journal = new();
    private readonly Logbook _book;
    private readonly SecondPlace _place;
    private readonly KeptActs _kept;

    public WhatTheDiskWouldNotTakeTests()
    {
        foreach (Line line in new ADay().Ready().Typed("run 417").Journal.Lines)
        {
            _journal.Append(line);
        }

        _book = Logbook.Open(_journal, new StoppedClock(), "00000000000000aa");
        _place = new SecondPlace(_folder["stick"], _folder.Study, "00000000000000aa");
        _kept = new KeptActs(_book, _folder.Study, _place);
    }

    [Fact]
    public void They_are_in_the_second_place_as_lines_that_enter_takes()
    {
        _journal.DiskIsFull = true;
        _book.Write("5860");
        _book.Write("; a lorry");

        string[] lines = File.ReadAllLines(_place.File);
        Assert.Equal(["5860", "; a lorry"], lines.Where(line => !EntryText.IsPassedOver(line)));
        Assert.All(
            lines.Where(EntryText.IsPassedOver),
            remark => Assert.Contains("not saved: no space left on the disk", remark, StringComparison.Ordinal)
        );
        Assert.Contains("2 acts are only in memory", Troubles()[^1], StringComparison.Ordinal);

        _journal.DiskIsFull = false;
        Outside again = new(lines);
        Assert.Equal(ExitCode.Done, EnterCommand.Run(_book, again.World));
        Assert.Equal(2, again.Answers.Count(answer => answer.StartsWith("ok ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_line_that_is_tried_until_the_disk_takes_it_is_kept_once_and_then_no_more()
    {
        _journal.DiskIsFull = true;
        _book.Write("5860");
        _book.Write("5860");
        Assert.Single(_book.Unsaved);

        _journal.DiskIsFull = false;
        _book.Write("5860");

        Assert.Empty(_book.Unsaved);
        Assert.False(_place.IsThere);
        Assert.Empty(_kept.AtTheEnd());
    }

    [Fact]
    public void At_the_end_every_one_is_said_and_where_it_is_kept()
    {
        _journal.DiskIsFull = true;
        _book.Write("5860");
        string end = string.Join('\n', _kept.AtTheEnd());
        Assert.Contains("1 act typed here is not in", end, StringComparison.Ordinal);
        Assert.Contains("  5860\n", end, StringComparison.Ordinal);
        Assert.Contains(_place.File, end, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_second_place_fails_too_it_is_said_and_the_acts_stay_in_memory()
    {
        File.WriteAllText(_folder["stick"], "a file where a folder should be");
        _journal.DiskIsFull = true;
        _book.Write("5860");
        Assert.Contains("They can't be kept in", Troubles()[^1], StringComparison.Ordinal);
        Assert.Equal("5860", Assert.Single(_book.Unsaved).Typed);
    }

    [Fact]
    public void What_an_earlier_sitting_left_there_is_said_and_not_written_over()
    {
        _journal.DiskIsFull = true;
        _book.Write("5860");
        using KeptActs next = new(Logbook.Open(_journal, new StoppedClock(), "00000000000000aa"), _folder.Study, _place);
        Assert.Contains("holds acts that could not be saved earlier", next.TakeTrouble(), StringComparison.Ordinal);
        _book.Write("; another");
        Assert.Contains("5860", File.ReadAllLines(_place.File));
    }

    public void Dispose()
    {
        _kept.Dispose();
        _folder.Dispose();
    }

    private List<string> Troubles()
    {
        List<string> said = [];
        while (_kept.TakeTrouble() is { } trouble)
        {
            said.Add(trouble);
        }

        return said;
    }
}
