using FieldSession.Aligning;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// Holds what a stream of levels shows over the current segment ready in the box. Enter takes it; the first key of anything else takes its place; Esc drops
/// it until the next segment.
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

    private LineMark? Begun => desk.Logbook.Study.RunOn is { } run ? run.Passages.IsEmpty ? run.Started : run.Passages[^1].Mark : null;

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
