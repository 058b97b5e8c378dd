namespace FieldSession.Comparing;

/// <summary>Tries the changes of the sensitivity one by one: the same function with other input (docs/method.md, "Sensitivity").</summary>
internal sealed class SensitivityFinding
{
    private readonly DayTable _table;
    private readonly ComparisonTerms _terms;
    private readonly MeasureClass? _class;
    private readonly int _code;
    private readonly int _reference;
    private readonly int[] _runs;
    private readonly int[] _segments;

    private SensitivityFinding(DayTable table, ComparisonTerms terms, string code, MeasureClass? measureClass)
    {
        _table = table;
        _terms = terms;
        _class = measureClass;
        _code = Array.IndexOf(table.Codes, code);
        _reference = terms.Reference is null ? 0 : Array.IndexOf(table.Codes, terms.Reference);
        _runs = [.. Enumerable.Range(0, table.Runs.Length)];
        _segments = table.SegmentsOf(measureClass);
    }

    /// <summary>Tries every change.</summary>
    public static Sensitivity Of(MeasuredDay day, ComparisonTerms terms, string code, MeasureClass? measureClass)
    {
        SensitivityFinding finding = new(DayTable.Of(day), terms, code, measureClass);
        PairLine? plain = finding.Line(finding._table.Valid, finding._runs, finding._segments, null);
        SensitivityLine[] lines = [.. finding.Changes(plain).OfType<SensitivityLine>()];
        return new Sensitivity(
            lines,
            lines.Length == 0 ? null : lines.Min(line => line.Overall.DifferenceDb),
            lines.Length == 0 ? null : lines.Max(line => line.Overall.DifferenceDb),
            plain is not null && lines.Any(line => line.Verdict != VerdictWords.Of(plain, terms)));
    }

    private IEnumerable<SensitivityLine?> Changes(PairLine? plain)
    {
        double[] valid = _table.Valid;
        yield return Change(SensitivityChange.SpoiltPutBack, "", Line(_table.All, _runs, _segments, null));
        foreach (int run in _runs)
        {
            yield return Change(
                SensitivityChange.RunLeftOut, $"{_table.Runs[run].Number}", Line(valid, [.. _runs.Where(r => r != run)], _segments, null));
        }

        foreach (int segment in _segments)
        {
            yield return Change(
                SensitivityChange.SegmentLeftOut,
                _table.Segments[segment].Segment,
                Line(valid, _runs, [.. _segments.Where(s => s != segment)], null));
        }

        if (plain is { Model.Design.Parallel: false })
        {
            bool drift = plain.Model.Design.DriftColumn is not null;
            PairLine? switched = Line(valid, _runs, _segments, !drift);
            yield return switched is { Model.Scatter.NuRun: > 0 } ? Change(SensitivityChange.DriftSwitched, "", switched) : null;
        }
    }

    private PairLine? Line(double[] cells, int[] runs, int[] segments, bool? drift) => _code < 0 || _reference < 0
        ? null
        : PairLine.Of(ClassView.Of(_table, cells, _class, _terms, runs, segments, drift), _code, _reference, _terms);

    private SensitivityLine? Change(SensitivityChange change, string name, PairLine? line) =>
        line is null ? null : new SensitivityLine(change, name, line.Overall, VerdictWords.Of(line, _terms));
}
