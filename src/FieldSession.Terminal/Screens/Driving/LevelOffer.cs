using System.Globalization;
using FieldSession.Aligning;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// Holds what a stream of levels shows over the current segment ready in the box. Enter takes it; the first key of anything else takes its
/// place; Esc drops it until the next segment.
/// </summary>
/// <param name="desk">What it may use.</param>
/// <param name="box">The box.</param>
internal sealed class LevelOffer(Desk desk, TypingBox box)
{
    private string _text = "";
    private LineMark? _dropped;

    /// <summary>What the stream shows; null: there is none.</summary>
    public StreamSight? Sight { get; private set; }

    /// <summary>Whether the box holds what was offered, and nothing that was typed.</summary>
    public bool IsInBox => _text.Length > 0 && box.Text == _text;

    private LineMark? Begun =>
        desk.Logbook.Study.RunOn is { } run
            ? run.Passages.IsEmpty
                ? run.Started
                : run.Passages[^1].Mark
            : null;

    /// <summary>Offers what the stream shows now, where nothing is typed.</summary>
    public void Renew()
    {
        if (desk.Levels is not { } levels)
        {
            return;
        }

        Study study = desk.Logbook.Study;
        DateTimeOffset now = desk.Clock.GetUtcNow();
        Segment? next = study.NextSegment;
        DateTimeOffset from = now.AddSeconds(-(next?.Seconds ?? StreamedLevels.TraceSeconds));
        Sight = levels.Now(now, Begun is { } begun && begun.At > from ? begun.At : from, next?.Kind.IsImpact == true);
        if (box.Text.Length == 0 || IsInBox)
        {
            Put(next is null || Begun == _dropped ? "" : DriveLevels.Offered(Sight));
        }
    }

    /// <summary>Takes the offer out of the box, because something is typed.</summary>
    public void GiveWay()
    {
        if (IsInBox)
        {
            Put("");
        }
    }

    /// <summary>Drops the offer until the next segment.</summary>
    /// <returns>Whether there was one.</returns>
    public bool Drop()
    {
        bool was = IsInBox;
        _dropped = was ? Begun : _dropped;
        GiveWay();
        return was;
    }

    private void Put(string text)
    {
        if (box.Text != text)
        {
            box.Put(text);
        }

        _text = text;
    }
}

/// <summary>
/// A stream of levels in words: the range that is offered, the last 20 s as a small trace, and what is wrong with the source.
/// </summary>
internal static class DriveLevels
{
    // eight heights of a block
    private const int Heights = 8;
    private const char LowestBlock = '\u2581';
    private const double LeastSpanDb = 6;

    /// <summary>The reading that is held ready, as it would be typed; empty: none.</summary>
    public static string Offered(StreamSight sight) =>
        sight switch
        {
            { LowDb: { } low, HighDb: { } high } when low < high - 0.05 => string.Create(
                CultureInfo.InvariantCulture,
                $"{low:0.0}-{high:0.0}"
            ),
            { HighDb: { } level } => string.Create(CultureInfo.InvariantCulture, $"{level:0.0}"),
            _ => "",
        };

    /// <summary>The row below the box.</summary>
    /// <param name="sight">What the stream shows.</param>
    /// <param name="isOffered">Whether the box holds its range.</param>
    /// <param name="columns">Columns to fill.</param>
    public static PageRow Row(StreamSight sight, bool isOffered, int columns) =>
        sight.Health switch
        {
            StreamHealth.Good => PageRow.Of(
                Columns.Cut(
                    $" {sight.LevelDb?.ToString("0.0", CultureInfo.CurrentCulture)} dB {Trace(sight)} "
                        + $"{(isOffered ? DrivingScreenWords.EnterTakesIt : "")}",
                    columns
                ),
                Ink.Quiet
            ),
            StreamHealth.Wild => Said(DrivingScreenWords.LevelsAreWild, columns),
            StreamHealth.Ended => Said(DrivingScreenWords.LevelsHaveEnded, columns),
            _ => Said(DrivingScreenWords.LevelsAreSilent, columns),
        };

    private static PageRow Said(string words, int columns) => PageRow.Of(Columns.Cut($" {words} ", columns), Ink.Alarm);

    private static string Trace(StreamSight sight)
    {
        double[] known = [.. sight.LastSecondsDb.OfType<double>()];
        if (known.Length == 0)
        {
            return "";
        }

        double span = Math.Max(LeastSpanDb, known.Max() - known.Min());
        double low = ((known.Max() + known.Min()) - span) / 2;
        return string.Concat(
            sight.LastSecondsDb.Select(level =>
                level is { } db ? (char)(LowestBlock + (int)Math.Clamp((db - low) / span * Heights, 0, Heights - 1)) : ' '
            )
        );
    }
}
