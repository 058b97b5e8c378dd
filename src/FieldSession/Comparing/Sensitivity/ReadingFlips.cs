namespace FieldSession.Comparing;

/// <summary>
/// Looks for the fewest readings whose flags turn the word of a pair: every single reading is tried; where none is enough, the one that
/// moves the word furthest is kept and the next is tried with it, up to <see cref="Most"/> (docs/formulas.md, "Sensitivity").
/// </summary>
/// <param name="table">The day.</param>
/// <param name="terms">Reference, margins, archive.</param>
/// <param name="measureClass">The class; null: all segments.</param>
internal sealed class ReadingFlips(DayTable table, ComparisonTerms terms, MeasureClass? measureClass)
{
    /// <summary>More readings than this are no small change.</summary>
    public const int Most = 3;

    // one comparison for each reading, several times over: beyond this somebody would wait for it
    private const double MostReadings = 400;

    private readonly int[] _runs = [.. Enumerable.Range(0, table.Runs.Length)];
    private readonly int[] _segments = table.SegmentsOf(measureClass);

    /// <summary>Whether a class is small enough.</summary>
    public bool IsQuick => _runs.Length * _segments.Length <= MostReadings;

    /// <summary>The fewest readings and the word then; null: not so few.</summary>
    /// <param name="plain">The pair as it is.</param>
    /// <param name="word">Its word.</param>
    /// <param name="code">Place of the code.</param>
    /// <param name="reference">Place of the reference.</param>
    public (IReadOnlyList<ChangedPlace> Places, string Verdict)? Fewest(PairLine plain, string word, int code, int reference)
    {
        int[] runs = [.. plain.Model.Counted.RunsByCode.SelectMany(own => own)];
        return Directions(plain.Overall)
            .Select(gain => Along(gain, word, runs, (code, reference)))
            .Where(found => found is not null)
            .MinBy(found => found!.Value.Places.Count);
    }

    // the word turns where one of its two p crosses the level: each is pushed to the other side of it
    private IEnumerable<Func<Estimate, double>> Directions(Estimate plain)
    {
        int away = plain.P < terms.Levels.Difference ? 1 : -1;
        int wider = plain.PTost < terms.Levels.Equivalence ? 1 : -1;
        yield return estimate => away * (estimate.P ?? 1);
        yield return estimate => wider * (estimate.PTost ?? 1);
    }

    private (IReadOnlyList<ChangedPlace> Places, string Verdict)? Along(
        Func<Estimate, double> gain,
        string word,
        int[] runs,
        (int Code, int Reference) pair
    )
    {
        double[] cells = [.. table.Valid];
        List<int> flipped = [];
        while (flipped.Count < Most)
        {
            Tried[] tried = [.. Candidates(runs, flipped).Select(at => Try(cells, at, pair.Code, pair.Reference)).OfType<Tried>()];
            if (tried.Length == 0)
            {
                return null;
            }

            Tried best = tried.MaxBy(each => (each.Verdict != word ? 1 : 0, gain(each.Overall)))!;
            flipped.Add(best.At);
            if (best.Verdict != word)
            {
                return ([.. flipped.Select(Place)], best.Verdict);
            }

            Flip(cells, best.At);
        }

        return null;
    }

    // a reading of a run that does not count changes nothing
    private IEnumerable<int> Candidates(int[] runs, List<int> flipped) =>
        from run in runs
        from segment in _segments
        let at = run * table.Segments.Length + segment
        where !double.IsNaN(table.All[at]) && !flipped.Contains(at)
        select at;

    private Tried? Try(double[] cells, int at, int code, int reference)
    {
        double[] changed = [.. cells];
        Flip(changed, at);
        ClassView? view = ClassView.Of(table, changed, measureClass, terms, _runs, _segments, null);
        return PairLine.Of(view, code, reference, terms) is { } pair && VerdictWords.HasVerdict(pair, terms)
            ? new Tried(at, pair.Overall, VerdictWords.Of(pair, CandidateFamily.Of(view, reference, terms), terms))
            : null;
    }

    private void Flip(double[] cells, int at) => cells[at] = double.IsNaN(cells[at]) ? table.All[at] : double.NaN;

    private ChangedPlace Place(int at) =>
        new(
            table.Runs[at / table.Segments.Length].Number,
            table.Segments[at % table.Segments.Length].Segment,
            double.IsNaN(table.Valid[at])
        );

    /// <summary>The comparison with one more flag changed.</summary>
    private sealed record Tried(int At, Estimate Overall, string Verdict);
}
