using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Crashes;

/// <summary>A study on disk and acts that are always taken: runs over and over, every reading and note another one.</summary>
/// <param name="folder">Where the study lies.</param>
internal sealed class EndlessDay(Folder folder)
{
    private int _acts;

    /// <summary>Makes the study, ready for its first run.</summary>
    public void Begin()
    {
        ADay day = new ADay().Ready();
        using StudyFile study = StudyFile.Create(folder.Study, new StoppedClock());
        foreach (Line line in day.Journal.Lines)
        {
            study.Append(line);
        }
    }

    /// <summary>The next acts, from where the journal is.</summary>
    public List<string> Acts(int count)
    {
        Study study = Logbook.Fold(Lines());
        int next = study.NextSegment?.Number ?? 0;
        List<string> acts = [];
        for (; acts.Count < count; _acts++)
        {
            bool isNote = _acts % 5 == 0;
            acts.Add(
                isNote ? $"; act {_acts}"
                : next == 0 ? $"run {(_acts % 2 == 0 ? 417 : 862)}"
                : $"{50 + _acts % 300 / 10.0:0.0}"
            );
            next =
                isNote ? next
                : next == study.Plan!.Route.Count ? 0
                : next + 1;
        }

        return acts;
    }

    /// <summary>That every acknowledged act is where the answer said, in a chain that holds.</summary>
    /// <returns>How many lines the journal has.</returns>
    public int AssertHolds(IEnumerable<(int Line, string Typed)> acknowledged, string what)
    {
        JournalCheck check = JournalCheck.Of(folder.Study);
        Assert.True(check.Text.Holds && check.Store.Holds && check.FirstDifference is null, $"{what}: {check}");
        List<Line> lines = Lines();
        foreach ((int number, string typed) in acknowledged)
        {
            Assert.True(
                number <= lines.Count,
                $"{what}: line {number} '{typed}' was acknowledged and is lost; {lines.Count} lines are there"
            );
            Assert.Equal(EntryText.Parse(typed, Study.Empty).Entry, EntryKinds.EntryIn(lines[number - 1]));
        }

        return lines.Count;
    }

    private List<Line> Lines() => [.. TextCopy.Read(new Disk().ReadAll(folder.Text)).Valid];
}
