namespace FieldSession.Comparing;

/// <summary>
/// What enters the comparison of a class (docs/formulas.md, "What counts"): runs with at least half of the class's segments, segments that
/// every code has a valid level on, and inside each code only what hangs together through shared segments.
/// </summary>
/// <param name="Cells">The table the levels are taken from.</param>
/// <param name="RunsByCode">Counted runs (rows of the table) of every analysed code; codes in the order of first driving.</param>
/// <param name="Codes">Places of the analysed codes.</param>
/// <param name="Segments">Compared segments (columns of the table).</param>
/// <param name="RunsOut">Numbers of the runs not counted.</param>
/// <param name="SegmentsOut">Names of the segments not compared.</param>
internal sealed record CountedReadings(double[] Cells, int[][] RunsByCode, int[] Codes, int[] Segments, int[] RunsOut, string[] SegmentsOut)
{
    /// <summary>Whether there are two codes and a segment to compare them on.</summary>
    public bool Comparable => Codes.Length >= 2 && Segments.Length > 0;

    /// <summary>How many runs count.</summary>
    public int RunCount => RunsByCode.Sum(runs => runs.Length);

    /// <summary>Finds what counts.</summary>
    /// <param name="table">The day.</param>
    /// <param name="cells">Its valid levels or all.</param>
    /// <param name="runs">Rows to look at.</param>
    /// <param name="segments">Columns of the class.</param>
    public static CountedReadings Of(DayTable table, double[] cells, IReadOnlyList<int> runs, int[] segments)
    {
        bool Has(int run, int segment) => !double.IsNaN(cells[run * table.Segments.Length + segment]);
        List<int> counted = [.. runs.Where(run => IsHalfRead(segments, segment => Has(run, segment)))];
        while (true)
        {
            int[][] byCode = [.. counted.GroupBy(run => table.Runs[run].Code).OrderBy(code => code.Key).Select(code => code.ToArray())];
            int[] compared = [.. segments.Where(segment => byCode.Length > 0 && byCode.All(code => code.Any(run => Has(run, segment))))];
            HashSet<int> adrift = compared.Length == 0 ? [] : Adrift(byCode, compared, Has);
            if (adrift.Count == 0)
            {
                return new CountedReadings(
                    cells,
                    byCode,
                    [.. byCode.Select(code => table.Runs[code[0]].Code)],
                    compared,
                    [.. runs.Except(counted).Select(run => table.Runs[run].Number)],
                    [.. segments.Except(compared).Select(segment => table.Segments[segment].Segment)]
                );
            }

            counted.RemoveAll(adrift.Contains);
        }
    }

    private static bool IsHalfRead(int[] segments, Func<int, bool> has) =>
        segments.Length > 0 && 2 * segments.Count(has) >= segments.Length;

    /// <summary>The runs outside the largest connected part of their code (most runs, then most levels, then first driven).</summary>
    private static HashSet<int> Adrift(int[][] byCode, int[] compared, Func<int, int, bool> has)
    {
        HashSet<int> adrift = [];
        foreach (int[] code in byCode)
        {
            int[] part = Parts(code, compared, has);
            if (Array.TrueForAll(part, p => p == part[0]))
            {
                continue;
            }

            int largest = Enumerable
                .Range(0, code.Length)
                .GroupBy(i => part[i])
                .OrderByDescending(group => group.Count())
                .ThenByDescending(group => compared.Sum(segment => group.Count(i => has(code[i], segment))))
                .First()
                .Key;
            adrift.UnionWith(code.Where((_, i) => part[i] != largest));
        }

        return adrift;
    }

    /// <summary>The first run of the part that each run belongs to; runs that share a segment are in one part.</summary>
    private static int[] Parts(int[] code, int[] compared, Func<int, int, bool> has)
    {
        int[] part = [.. Enumerable.Range(0, code.Length)];
        foreach (int segment in compared)
        {
            int first = -1;
            for (int i = 0; i < code.Length; i++)
            {
                if (has(code[i], segment))
                {
                    first = first < 0 ? i : first;
                    Join(part, first, i);
                }
            }
        }

        return [.. part.Select((_, i) => RootOf(part, i))];
    }

    private static void Join(int[] part, int one, int other)
    {
        (int a, int b) = (RootOf(part, one), RootOf(part, other));
        part[Math.Max(a, b)] = Math.Min(a, b);
    }

    private static int RootOf(int[] part, int run)
    {
        while (part[run] != run)
        {
            part[run] = part[part[run]];
            run = part[run];
        }

        return run;
    }
}
