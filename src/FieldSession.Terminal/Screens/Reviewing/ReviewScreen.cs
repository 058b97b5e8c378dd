using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Parked;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>The review screen: the summary, and each segment's own page one key below it.</summary>
internal sealed class ReviewScreen(Desk desk, Pen pen) : ParkedScreen(ScreenName.Review, desk, pen)
{
    private int _segment = 1;
    private bool _isBelow;
    private (Study Study, ReviewSight? Sight) _seen = (Study.Empty, null);

    /// <inheritdoc/>
    protected override ParkedPage Page(int columns)
    {
        if (Study.Plan is null)
        {
            return new ParkedPage([], ReviewScreenWords.MakePlanFirst);
        }

        ReviewSight sight = Sight() with { Segment = _segment };
        string name = Columns.Cut(sight.Plan.Route[_segment - 1].Name, 20);
        if (_isBelow)
        {
            return new ParkedPage(SegmentPage.Of(sight, columns), ReviewScreenWords.SegmentKeys(LateFlag()));
        }

        System.Collections.Immutable.ImmutableArray<Look.PageRow> rows = ReviewPage.Of(sight, columns);
        int marked = rows.Select(row => row.Text).ToList().FindIndex(text => text.StartsWith(SegmentBlock.Mark, StringComparison.Ordinal));
        return new ParkedPage(rows, $"Enter: {_segment} {name}; {NextStep.Words(Study, Desk.Keys, ScreenName.Review)}")
        {
            Marked = marked < 0 ? null : marked,
        };
    }

    /// <inheritdoc/>
    protected override void Take(string answer)
    {
        if (Study.Plan is not { } plan)
        {
            return;
        }

        if (Typed.Count(answer) is { } number && number <= plan.Route.Count)
        {
            _segment = number;
            Go(below: true);
        }
        else if (answer.Length > 0)
        {
            Write(answer);
        }
        else if (!_isBelow)
        {
            Go(below: true);
        }
    }

    /// <inheritdoc/>
    protected override void Do(KeyDeed deed)
    {
        int last = Study.Plan?.Route.Count ?? 1;
        switch (deed)
        {
            case KeyDeed.Previous:
                _segment = _segment == 1 ? last : _segment - 1;
                break;
            case KeyDeed.Next:
                _segment = _segment == last ? 1 : _segment + 1;
                break;
            case KeyDeed.Back when _isBelow:
                Go(below: false);
                break;
        }
    }

    private void Go(bool below)
    {
        _isBelow = below;
        ToTop();
    }

    private string LateFlag() => Study.DataFrozen || Study.Runs.Count == 0 ? "" : ReviewScreenWords.LateFlagForm(_segment);

    // Comparing is the dearest thing here, and only a new study can change it.
    private ReviewSight Sight()
    {
        if (_seen.Sight is null || !ReferenceEquals(_seen.Study, Study))
        {
            MeasuredDay day = StudyReadings.Of(Study);
            ComparisonTerms terms = StudyTerms.Of(Study);
            _seen = (
                Study,
                new ReviewSight(Study, day, BlindComparison.InFull(day, terms), (Desk.Logbook.Lines.Count, Desk.Logbook.HeadHash), _segment)
                {
                    Ear = EarFindings.Of(Study, terms),
                }
            );
        }

        return _seen.Sight!;
    }
}
