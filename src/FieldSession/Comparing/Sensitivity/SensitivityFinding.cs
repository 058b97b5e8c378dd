using System.Globalization;

namespace FieldSession.Comparing;

/// <summary>
/// Tries the changes of the sensitivity one by one: the same function with other input (docs/formulas.md, "Sensitivity").
/// </summary>
/// <param name="table">The day.</param>
/// <param name="terms">Reference, margins, archive.</param>
internal sealed class SensitivityFinding(DayTable table, ComparisonTerms terms)
{
    private readonly int _reference = terms.Reference is null ? 0 : Array.IndexOf(table.Codes, terms.Reference);
    private readonly int[] _runs = [.. Enumerable.Range(0, table.Runs.Length)];

    /// <summary>What the changes do to every code that the class compares with the reference.</summary>
    public Dictionary<string, Sensitivity> OfClass(MeasureClass? measureClass)
    {
        int[] segments = table.SegmentsOf(measureClass);
        ClassView? View(double[] cells, int[] runs, int[] chosen, bool? drift) =>
            ClassView.Of(table, cells, measureClass, terms, runs, chosen, drift);

        ClassView? plain = View(table.Valid, _runs, segments, null);
        Dictionary<string, Sensitivity> found = [];
        if (plain?.Model is null || _reference < 0)
        {
            return found;
        }

        CandidateFamily family = CandidateFamily.Of(plain, _reference, terms);
        // a run or a segment that does not count changes nothing by being left out
        HashSet<int> counted = [.. plain.Model.Counted.RunsByCode.SelectMany(runs => runs)];
        Changed[] changes =
        [
            .. table.HasSpoilt(measureClass)
                ? [new Changed(SensitivityChange.SpoiltPutBack, "", View(table.All, _runs, segments, null))]
                : Array.Empty<Changed>(),
            .. _runs
                .Where(counted.Contains)
                .Select(run => new Changed(
                    SensitivityChange.RunLeftOut,
                    $"{table.Runs[run].Number}",
                    View(table.Valid, [.. _runs.Where(r => r != run)], segments, null)
                )),
            .. plain.Model.Counted.Segments.Select(segment => new Changed(
                SensitivityChange.SegmentLeftOut,
                table.Segments[segment].Segment,
                View(table.Valid, _runs, [.. segments.Where(s => s != segment)], null)
            )),
            .. Switched(plain.Model, drift => View(table.Valid, _runs, segments, drift)),
        ];
        foreach (int code in plain.Counted.Codes)
        {
            if (code != _reference && PairLine.Of(plain, code, _reference, terms) is PairLine pair)
            {
                found[table.Codes[code]] = OfPair(pair, family, code, changes, new ReadingFlips(table, terms, measureClass));
            }
        }

        return found;
    }

    private static IEnumerable<Changed> Switched(ClassModel plain, Func<bool, ClassView?> view)
    {
        if (plain.Design.Parallel)
        {
            yield break;
        }

        Changed switched = new(SensitivityChange.DriftSwitched, "", view(plain.Design.DriftColumn is null));
        if (switched.View?.Model is { Scatter.NuRun: > 0 })
        {
            yield return switched;
        }
    }

    private Sensitivity OfPair(PairLine plain, CandidateFamily family, int code, Changed[] changes, ReadingFlips flips)
    {
        SensitivityLine[] lines = [.. changes.Select(change => Line(change, code)).OfType<SensitivityLine>()];
        double[] differences = [plain.Overall.DifferenceDb, .. lines.Select(line => line.Overall.DifferenceDb)];
        string verdict = VerdictWords.Of(plain, family, terms);
        return new Sensitivity(lines, differences.Min(), differences.Max(), lines.Any(line => line.HasVerdict && line.Verdict != verdict))
        {
            Least = VerdictWords.HasVerdict(plain, terms) ? Least(plain, family, code, lines, flips) : null,
            ReadingsTried = flips.IsQuick,
        };
    }

    private LeastChange? Least(PairLine plain, CandidateFamily family, int code, SensitivityLine[] lines, ReadingFlips flips)
    {
        string word = VerdictWords.Of(plain, family, terms);
        LeastChange Of(ChangeSize size, IReadOnlyList<ChangedPlace> places, string verdict) =>
            new(size, places, verdict, new TurnedByChance(plain, table, family.LevelsOf(plain)).Share(size, places.Count));
        SensitivityLine? Turning(SensitivityChange change) =>
            Array.Find(lines, line => line.Change == change && line.HasVerdict && line.Verdict != word);
        return flips.IsQuick && flips.Fewest(plain, word, code, _reference) is { } readings
                ? Of(ChangeSize.Readings, readings.Places, readings.Verdict)
            : Turning(SensitivityChange.RunLeftOut) is { } run
                ? Of(
                    ChangeSize.Run,
                    [new ChangedPlace(int.Parse(run.Name, CultureInfo.InvariantCulture), null, PutBack: false)],
                    run.Verdict
                )
            : Turning(SensitivityChange.SegmentLeftOut) is { } segment
                ? Of(ChangeSize.Segment, [new ChangedPlace(null, segment.Name, PutBack: false)], segment.Verdict)
            : null;
    }

    private SensitivityLine? Line(Changed change, int code) =>
        PairLine.Of(change.View, code, _reference, terms) is PairLine pair
            ? new SensitivityLine(
                change.Change,
                change.Name,
                pair.Overall,
                VerdictWords.Of(pair, change.Family(_reference, terms), terms),
                VerdictWords.HasVerdict(pair, terms)
            )
            : null;

    /// <summary>A view after a change.</summary>
    private sealed record Changed(SensitivityChange Change, string Name, ClassView? View)
    {
        private CandidateFamily? _family;

        /// <summary>What is asked at once then.</summary>
        public CandidateFamily Family(int reference, ComparisonTerms terms) => _family ??= CandidateFamily.Of(View, reference, terms);
    }
}
