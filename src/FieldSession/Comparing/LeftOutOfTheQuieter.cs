namespace FieldSession.Comparing;

/// <summary>
/// Traffic and its like only raise levels. If a difference is shown only because readings of the quieter code were left out, that has to be said:
/// put back the quieter code's spoilt readings alone, and look whether the difference is still there.
/// </summary>
internal static class LeftOutOfTheQuieter
{
    /// <summary>The comparison, with a remark in front where the difference hangs on what was left out of the quieter code.</summary>
    public static ClassComparison? Remarked(ClassComparison? clean, DayTable table, int code, int reference, ComparisonTerms terms)
    {
        if (clean is not { Overall.DifferenceDb: double difference, Basis.PDifference: double p } || p >= terms.Levels.Difference)
        {
            return clean;
        }

        int quieter = difference < 0 ? code : reference;
        if (PutBack(table, clean.Class, quieter) is not double[] cells)
        {
            return clean;
        }

        ClassView? view = ClassView.Of(table, cells, clean.Class, terms);
        PairLine? pair = PairLine.Of(view, code, reference, terms);
        bool stands = pair is not null
            && CandidateFamily.Of(view, reference, terms).POf(pair).Difference < terms.Levels.Difference
            && Math.Sign(pair.Overall.DifferenceDb) == Math.Sign(difference);
        return stands ? clean : clean with { Remarks = [Words(table.Codes[quieter]), .. clean.Remarks] };
    }

    private static string Words(string quieter) =>
        ComparingWords.DifferenceHangsOnReadingsLeftOut(quieter);

    /// <summary>The valid levels, but the code's own spoilt ones put back; null: it has none in the class.</summary>
    private static double[]? PutBack(DayTable table, MeasureClass? measureClass, int code)
    {
        double[]? cells = null;
        int[] segments = table.SegmentsOf(measureClass);
        for (int run = 0; run < table.Runs.Length; run++)
        {
            foreach (int segment in table.Runs[run].Code == code ? segments : [])
            {
                int at = run * table.Segments.Length + segment;
                if (!table.Valid[at].Equals(table.All[at]))
                {
                    cells ??= [.. table.Valid];
                    cells[at] = table.All[at];
                }
            }
        }

        return cells;
    }
}
