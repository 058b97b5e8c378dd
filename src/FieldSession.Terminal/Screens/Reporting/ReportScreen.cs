using System.Collections.Immutable;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Terminal.Look;
using FieldSession.Terminal.Parked;

namespace FieldSession.Terminal.Screens.Reporting;

/// <summary>The report on the screen; one key writes it to its file.</summary>
internal sealed class ReportScreen(Desk desk, Pen pen) : ParkedScreen(ScreenName.Report, desk, pen)
{
    private (Study Study, Report? Report) _made = (Study.Empty, null);

    /// <inheritdoc/>
    protected override ParkedPage Page(int columns)
    {
        string next = NextStep.Words(Study, Desk.Keys, ScreenName.Report);
        ImmutableArray<PageRow> rows = ReportRows.Of(Report(), columns);
        return new ParkedPage(rows, ReportScreenWords.HowToWrite(next));
    }

    /// <inheritdoc/>
    protected override void Take(string answer)
    {
        if (answer.Length > 0)
        {
            Write(answer);
        }
    }

    /// <inheritdoc/>
    protected override void Do(KeyDeed deed)
    {
        if (deed == KeyDeed.Save)
        {
            Save();
        }
    }

    private void Save()
    {
        try
        {
            Say(Desk.WriteReport is { } write ? $"written: {write()}" : ReportScreenWords.NotWritableHere);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Say(ReportScreenWords.NotWritten(refused));
        }
    }

    // Made again only for a new study: it compares the day.
    private Report Report()
    {
        if (_made.Report is null || !ReferenceEquals(_made.Study, Study))
        {
            Provenance provenance = new(Desk.Logbook.Lines.Count, Desk.Logbook.HeadHash, Desk.Version);
            _made = (Study, DayReport.Of(Study, OpenedKey.In(Desk.Logbook.Entries), provenance));
        }

        return _made.Report!;
    }
}
