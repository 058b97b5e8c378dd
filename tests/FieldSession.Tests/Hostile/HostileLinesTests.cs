using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Hostile;

/// <summary>
/// Lines at random into the one grammar, in every state a study gets into by them. Set FIELDSESSION_HOSTILE_LINES to a number
/// to type more than the 200,000 of every build.
/// </summary>
public sealed class HostileLinesTests(ITestOutputHelper output)
{
    private const int LinesPerDay = 500;

    [Fact]
    public void Any_line_is_either_stored_or_refused_and_never_breaks_the_program()
    {
        long lines = long.TryParse(Environment.GetEnvironmentVariable("FIELDSESSION_HOSTILE_LINES"), out long more) ? more : 200_000;
        long stored = 0;
        for (int seed = 0; seed * (long)LinesPerDay < lines; seed++)
        {
            stored += TypeADay(seed);
        }

        output.WriteLine(
            $"{lines} lines typed, {stored} stored, {lines - stored} refused; highest memory {Environment.WorkingSet >> 20} MiB now"
        );
        Assert.InRange(stored, lines / 100, lines - lines / 100);
    }

    private static int TypeADay(int seed)
    {
        Rubbish rubbish = new(new Random(seed));
        ADay day =
            seed % 3 == 0 ? new ADay(isSealed: false)
            : seed % 3 == 1 ? new ADay()
            : new ADay(ARoute.Plan).Ready().Typed("run 417");
        int before = day.Book.Lines.Count;
        for (int i = 0; i < LinesPerDay; i++)
        {
            string line = rubbish.Line();
            AssertStoredOrRefused(day, line, $"seed {seed}, line {i}: {line}");
        }

        // what was stored can be read again
        Study again = Logbook.Fold(day.Book.Lines.Select(line => Line.Parse(line.ToString())!));
        Assert.Equal(day.Study.Runs.Sum(run => run.Passages.Count), again.Runs.Sum(run => run.Passages.Count));
        Assert.Equal(day.Study.Notes.Count, again.Notes.Count);
        return day.Book.Lines.Count - before;
    }

    private static void AssertStoredOrRefused(ADay day, string line, string what)
    {
        int lines = day.Book.Lines.Count;
        Study before = day.Study;
        Outcome outcome;
        try
        {
            outcome = day.Book.Write(line);
        }
        catch (Exception fault)
        {
            throw new InvalidOperationException(what, fault);
        }

        bool isStored =
            outcome.IsWritten && outcome.Objection is null && day.Book.Lines.Count == lines + 1 && outcome.Echo!.Words.Length > 0;
        bool isRefused =
            !outcome.IsWritten
            && outcome.Objection is { Why.Length: > 0, Instead.Length: > 0 }
            && day.Book.Lines.Count == lines
            && ReferenceEquals(day.Study, before);
        Assert.True(isStored != isRefused, what);
    }
}
