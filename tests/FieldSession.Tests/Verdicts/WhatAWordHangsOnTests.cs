using System.Text.RegularExpressions;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Verdicts;

/// <summary>
/// What is said of how much a word hangs on: the change is made on the readings themselves, and the word must turn as it says.
/// </summary>
public sealed partial class WhatAWordHangsOnTests
{
    /// <summary>A class with its sensitivity, and the day that it was found in.</summary>
    private sealed record Hanging(VerdictDay Day, string Code, ClassComparison One, string Sentence)
    {
        private LeastChange Least => One.Sensitivity!.Least!;

        public bool TurnsAsItSays =>
            Sentence.Contains($"'{Least.Verdict}'", StringComparison.Ordinal)
            && Least.Verdict != One.Verdict
            && Word(Changed(Least.Places)) == Least.Verdict;

        public bool IsLeast(ChangeSize size, int readings) => Least.Size == size && Least.Places.Count == readings;

        public bool IsCounted => Least.Places.All(place => place.Run is not { } run || !One.RunsNotCounted.Contains(run));

        public bool NoReadingTurnsIt =>
            Day
                .Day.Levels.Where(level => !One.RunsNotCounted.Contains(level.Run))
                .All(level =>
                    Word(Changed([new ChangedPlace(level.Run, level.Segment, level.Spoilt)])) is var word
                    && (word == One.Verdict || word.StartsWith("no ", StringComparison.Ordinal))
                );

        /// <summary>The single change named beside the least one gives the same word, each of them compared by itself.</summary>
        public bool NamesOnlyWhatTurnsIt =>
            Single().Match(Sentence).Groups[1].Value is var named
            && (
                named.Length == 0
                || One.Sensitivity!.Lines.Any(line =>
                    line.Verdict == Least.Verdict
                    && (named == "the drift column switched" || named == $"{line.Name} left out" || named == $"run {line.Name} left out")
                )
            );

        public bool NoRunOrSegmentTurnsIt =>
            Day
                .Day.Levels.Select(level => new ChangedPlace(level.Run, null, false))
                .Concat(Day.Day.Levels.Select(level => new ChangedPlace(null, level.Segment, false)))
                .Distinct()
                .Select(place => Word(Changed([place])))
                .All(word => word == One.Verdict || word.StartsWith("no ", StringComparison.Ordinal));

        public override string ToString() => $"{Day.Name}, {Code}: {One.Verdict}";

        private MeasuredDay Changed(IReadOnlyList<ChangedPlace> places) =>
            Day.Day with
            {
                Levels =
                [
                    .. Day
                        .Day.Levels.Where(level => !places.Any(place => place is { Run: null } or { Segment: null } && IsAt(level, place)))
                        .Select(level =>
                            places.Any(place => IsAt(level, place)) ? level with { Spoilt = !level.Spoilt, Cause = null } : level
                        ),
                ],
            };

        private static bool IsAt(MeasuredLevel level, ChangedPlace place) =>
            (place.Run is null || place.Run == level.Run) && (place.Segment is null || place.Segment == level.Segment);

        private string Word(MeasuredDay day) =>
            BlindComparison.Of(day, Day.Terms).Comparisons.FirstOrDefault(pair => pair.Code == Code)?.Classes.Steady?.Verdict
            ?? "no comparison";
    }

    [GeneratedRegex(@"\. The same with (.+?)(?:, and with \d+ other single changes?)?$")]
    private static partial Regex Single();

    private const string Chance =
        "; by chance alone (?:hardly any day|about [1-9] in 10 days|almost every day) of this design would hang on so little"
        + "(?:\\. The same with .+)?";

    private static WordTable<Hanging> OfHanging =>
        new(
            new(
                "with 1 (?:more|spoilt) reading (?:left out|put back) \\(run \\d+, s\\d+\\) it says '.*'" + Chance,
                "that flag changed gives that word",
                h => h.IsLeast(ChangeSize.Readings, 1) && h is { TurnsAsItSays: true, NamesOnlyWhatTurnsIt: true, IsCounted: true }
            ),
            new(
                "with [23] (?:(?:more|spoilt) readings (?:left out|put back)|flags changed) \\(run .*\\) it says '.*'" + Chance,
                "those flags changed give that word, and no single one does",
                h =>
                    !h.IsLeast(ChangeSize.Readings, 1)
                    && h is { TurnsAsItSays: true, NamesOnlyWhatTurnsIt: true, NoReadingTurnsIt: true, IsCounted: true }
            ),
            new(
                "with run \\d+ left out it says '.*'" + Chance,
                "without that run it is that word, and no single flag is enough",
                h =>
                    h.IsLeast(ChangeSize.Run, 1)
                    && h is { TurnsAsItSays: true, NamesOnlyWhatTurnsIt: true, NoReadingTurnsIt: true, IsCounted: true }
            ),
            new(
                "with s\\d+ left out it says '.*'" + Chance,
                "without that segment it is that word, and nothing smaller is enough",
                h => h.IsLeast(ChangeSize.Segment, 1) && h is { TurnsAsItSays: true, NamesOnlyWhatTurnsIt: true, NoReadingTurnsIt: true }
            ),
            new(
                "no 1 to 3 readings, no run and no segment changes it when left out",
                "indeed none of them does",
                h => h is { One.Sensitivity.Least: null, NoReadingTurnsIt: true, NoRunOrSegmentTurnsIt: true }
            )
        );

    [Fact]
    public void What_a_word_hangs_on_turns_it_when_it_is_done()
    {
        WordTable<Hanging> table = OfHanging;
        foreach (Hanging hanging in Found(140))
        {
            table.Read(hanging.Sentence, hanging);
        }

        table.HasNoIdleLine();
    }

    [Fact]
    public void A_clear_day_hangs_on_nothing_and_a_run_that_does_not_count_is_never_named()
    {
        MeasuredDay clear = InventedReadings
            .Scattered("A B B A A B B A", 6, secondCodeDb: 9)
            .Spoilt(level => level.Run == 2 && level.Segment != "s0");
        ClassComparison one = BlindComparison.InFull(clear, new ComparisonTerms("A")).Comparisons[0].Classes.Steady!;
        Assert.Equal([2], one.RunsNotCounted);
        Assert.DoesNotContain(one.Sensitivity!.Lines, line => line is { Change: SensitivityChange.RunLeftOut, Name: "2" });
        Assert.Equal("no 1 to 3 readings, no run and no segment changes it when left out", HangsOnWords.Sentence(one.Sensitivity));
    }

    [Fact]
    public void The_share_of_such_days_is_the_same_every_time()
    {
        VerdictDay day = VerdictDays.Random(30).First(each => With(each) is { Sensitivity.Least: not null });
        Assert.Equal(With(day)!.Sensitivity!.Least!.ShareByChance, With(day)!.Sensitivity!.Least!.ShareByChance);
        Assert.InRange(With(day)!.Sensitivity!.Least!.ShareByChance, 0, 1);
    }

    private static ClassComparison? With(VerdictDay day) =>
        BlindComparison.InFull(day.Day, day.Terms).Comparisons is [var first, ..] ? first.Classes.Steady : null;

    private static IEnumerable<Hanging> Found(int days) =>
        from day in VerdictDays
            .Random(days)
            .Append(new VerdictDay("clear", InventedReadings.Scattered("A B B A A B B A", 6, secondCodeDb: 9), new ComparisonTerms("A")))
        from pair in BlindComparison.InFull(day.Day, day.Terms).Comparisons
        let one = pair.Classes.Steady
        let sentence = HangsOnWords.Sentence(one?.Sensitivity)
        where sentence is not null
        select new Hanging(day, pair.Code, one!, sentence);
}
