using System.Text.RegularExpressions;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Slips;

/// <summary>What came of a run that a slipping hand typed.</summary>
/// <param name="Meant">Readings and missed segments meant.</param>
/// <param name="Keys">Keys meant.</param>
/// <param name="Slips">Slips made.</param>
/// <param name="Seen">Looks after a segment that saw something wrong.</param>
/// <param name="Wrong">Segments that are not as meant when the run is over.</param>
/// <param name="NotPointedOut">Those of them that the stop does not point out, in words.</param>
internal sealed record SlippingRunOutcome(int Meant, int Keys, int Slips, int Seen, int Wrong, IReadOnlyList<string> NotPointedOut);

/// <summary>
/// A run typed by a slipping hand. The co-driver looks at the screen once after every segment and sees what is odd: words about what
/// was refused, something left in the box, another segment due than the one ahead, the sign of a flag. Figures are not read again.
/// </summary>
internal sealed partial class SlippingRun
{
    private const int MostFixes = 80;

    private readonly ADay _day;
    private readonly Tui _tui;
    private readonly Random _chance;
    private readonly SlippingHand _hand;
    private readonly List<MeantReading> _meant = [];
    private int _seen;

    private SlippingRun(ADay day, Tui tui, Random chance, double rate)
    {
        (_day, _tui, _chance) = (day, tui, chance);
        _hand = new SlippingHand(tui, chance, rate);
    }

    /// <summary>The run of a seed.</summary>
    public static SlippingRunOutcome Of(int seed, double rate, bool looks = true)
    {
        ADay day = new ADay(
            ARoute.Plan with
            {
                Route = [.. ARoute.Plan.Route.Select(segment => segment with { NominalDb = Nominal(segment) })],
            }
        ).Ready();
        using Tui tui = new(day);
        return new SlippingRun(day, tui, new Random(seed), rate).Driven(looks);
    }

    private static double Nominal(Segment segment) =>
        segment.NominalDb ?? 55 + ((segment.Number * 7) % 15) + (segment.Kind.IsImpact ? 5 : 0);

    private SlippingRunOutcome Driven(bool looks)
    {
        _tui.After(1000, '\n');
        int segments = _day.Study.Plan!.Route.Count;
        for (int segment = 1; segment <= segments; segment++)
        {
            _day.Clock.Advance(TimeSpan.FromSeconds(_chance.Next(8, 40)));
            _meant.Add(AReading(_day.Study.Plan.Route[segment - 1]));
            _hand.Type(_meant[^1].Keys);
            _day.Clock.Advance(TimeSpan.FromSeconds(2));
            if (looks && SeesSomething())
            {
                _seen++;
                Fix();
            }
        }

        Run run = _day.Study.Runs[0];
        int[] wrong = [.. Enumerable.Range(1, segments).Where(segment => !IsAsMeant(run, segment))];
        string[] unsaid = [.. wrong.Where(segment => !IsPointedOut(run, segment)).Select(segment => Told(run, segment))];
        return new SlippingRunOutcome(segments, _hand.Meant, _hand.Slips, _seen, wrong.Length, unsaid);
    }

    private MeantReading AReading(Segment segment)
    {
        if (_chance.NextDouble() < 0.03)
        {
            return new MeantReading("", null, false);
        }

        int low = (int)Math.Round(segment.NominalDb!.Value) + _chance.Next(-3, 2);
        string figures = segment.Kind.IsImpact ? $"{low}{_chance.Next(10)}" : $"{low}{low + _chance.Next(1, 5)}";
        return new MeantReading(figures, _chance.NextDouble() < 0.15 ? "twsrn"[_chance.Next(5)] : null, _chance.Next(2) == 0);
    }

    private bool SeesSomething()
    {
        string[] rows = _tui.Rows;
        int box = Array.FindIndex(rows, row => row.TrimStart().StartsWith('>'));
        bool refused = rows[box + 1].Trim().Length > 0;
        string due = Due().Match(_tui.Screen) is { Success: true } next ? next.Groups[1].Value : "";
        string ahead = _meant.Count < _day.Study.Plan!.Route.Count ? $"{_meant.Count + 1}" : "";
        bool signOfFlag = _tui.Screen.Contains("! spoilt", StringComparison.Ordinal);
        return refused
            || _tui.Box.Length > 0
            || due != ahead
            || signOfFlag != (_meant[^1].Figures.Length > 0 && _meant[^1].Flag is not null);
    }

    // What is on the screen is put right from the last act on, and typed again.
    private void Fix()
    {
        _tui.Keys("<Esc><Esc>");
        for (int i = 0; i < MostFixes && !IsBegun(); i++)
        {
            _hand.TypeWithCare("u");
        }

        if (_day.Study.RunOn is { } run)
        {
            foreach (MeantReading reading in _meant.Skip(run.Passages.Count))
            {
                _hand.TypeWithCare(reading.Keys);
            }
        }
    }

    private bool IsBegun()
    {
        Run? run = _day.Study.Runs.Count == 1 ? _day.Study.RunOn : null;
        bool fits = run is not null && run.NextSegment == run.Passages.Count + 1 && run.Passages.Count <= _meant.Count;
        return (
                fits
                && run!
                    .Passages.Index()
                    .All(passage =>
                        passage.Item.Segment == passage.Index + 1
                        && (passage.Index < _meant.Count - 2 || _meant[passage.Index].IsAsMeant(passage.Item))
                    )
            ) || IsOverAsMeant();
    }

    private bool IsOverAsMeant() =>
        _day.Study.Runs.Count == 1
        && _day.Study.RunOn is null
        && _meant.Count == _day.Study.Plan!.Route.Count
        && _day.Study.Runs[0].Passages.Count == _meant.Count
        && _meant[^1].IsAsMeant(_day.Study.Runs[0].Passages[^1]);

    private bool IsAsMeant(Run run, int segment)
    {
        Passage[] here = [.. run.Passages.Where(passage => passage.Segment == segment)];
        return here.Length == 1 && _meant[segment - 1].IsAsMeant(here[0]);
    }

    // The stop asks about what is doubtful, lists what was missed or never read, and shows each flag with its cause.
    private static bool IsPointedOut(Run run, int segment)
    {
        Passage[] here = [.. run.Passages.Where(passage => passage.Segment == segment)];
        return here.Length == 0
            || Array.Exists(
                here,
                passage =>
                    passage
                        is Missed
                            or Reading { IsToBeAsked: true }
                            or Reading { Spoilt: not null }
                            or Reading { FlagTakenBack: not null }
            );
    }

    private string Told(Run run, int segment)
    {
        string meant = _meant[segment - 1].Keys.Replace("\n", "~", StringComparison.Ordinal);
        IEnumerable<string> got = run.Passages.Where(passage => passage.Segment == segment).Select(InWords);
        return $"segment {segment}: meant `{meant}`, got {string.Join(" and ", got)}";
    }

    private static string InWords(Passage passage) =>
        passage is Reading reading ? $"{reading.Levels}{(reading.Spoilt is null ? "" : "!")}" : "missed";

    [GeneratedRegex(@"NEXT (\d+) of")]
    private static partial Regex Due();
}
