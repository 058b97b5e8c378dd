using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>The last line of each strand, as lines are taken in the order of their arrival.</summary>
internal sealed class Chains
{
    private readonly Dictionary<string, Line> _heads = [];

    /// <summary>The last line taken of each strand.</summary>
    public IReadOnlyCollection<Line> Heads => _heads.Values;

    /// <summary>Goes on behind a line that was verified before.</summary>
    public void Continue(Line head) => _heads[head.Strand] = head;

    /// <summary>Takes a line if it is the next one of its strand; false: it is not.</summary>
    public bool Takes(Line line)
    {
        if (!line.Follows(HeadOf(line.Strand)))
        {
            return false;
        }

        _heads[line.Strand] = line;
        return true;
    }

    /// <summary>The last line taken of a strand; null: none yet.</summary>
    public Line? HeadOf(string strand) => _heads.GetValueOrDefault(strand);
}
