using FieldSession.Journal;
using LiteDB;

namespace FieldSession.Store.Journaling;

/// <summary>Takes up the documents of a LiteDB file one by one and notes what is missing or wrong.</summary>
/// <param name="known">The text's line for each place, null where it has none: what is equal needs no second hashing.</param>
internal sealed class StoreReading(IReadOnlyList<Line?> known)
{
    private readonly List<Line> _lines = [];
    private readonly List<Line> _fromTheEnd = [];
    private string? _fault;
    private int _faultAt;
    private int _place;
    private int _highest;

    /// <summary>Takes the next document, in order. Always asks for another one.</summary>
    public bool Take(BsonDocument document)
    {
        long place = StoredLine.PlaceIn(document);
        if (place <= _place || place > int.MaxValue)
        {
            Note(_place + 1, SecondCopyWords.PlaceIsTakenOrNone);
            return true;
        }

        if (place > _place + 1)
        {
            Note(_place + 1, SecondCopyWords.PlacesAreMissing(_place + 1, place - 1));
        }

        _place = _highest = (int)place;
        if (LineIn(document) is { } line)
        {
            _lines.Add(line);
        }
        else
        {
            Note(_place, SecondCopyWords.HashIsNotOfText);
        }

        return true;
    }

    /// <summary>Takes the last document, met from the other end: it has to be the one met last in order.</summary>
    public bool CompareEnd(BsonDocument document)
    {
        long place = StoredLine.PlaceIn(document);
        if (place != _place)
        {
            Note(_place + 1, SecondCopyWords.EndsDiffer(_place, place));
        }

        return false;
    }

    /// <summary>Notes that LiteDB could not go on.</summary>
    public void Break(string why)
    {
        _highest = _place + 1;
        Note(_place + 1, SecondCopyWords.StoreCantBeRead(why));
    }

    /// <summary>Takes the next document, from the last one backwards; false: it was met before.</summary>
    public bool TakeFromTheEnd(BsonDocument document)
    {
        long place = StoredLine.PlaceIn(document);
        if (place <= _place || place > int.MaxValue)
        {
            return false;
        }

        _highest = Math.Max(_highest, (int)place);
        if (LineIn(document) is { } line)
        {
            _fromTheEnd.Insert(0, line);
        }

        return true;
    }

    /// <summary>All that was found.</summary>
    public StoreCopy Result() => new([.. _lines, .. _fromTheEnd], _fault, _faultAt, _highest);

    private Line? LineIn(BsonDocument document)
    {
        long place = StoredLine.PlaceIn(document);
        return place <= known.Count && known[(int)place - 1] is { } line && StoredLine.Holds(document, line)
            ? line
            : StoredLine.LineIn(document);
    }

    private void Note(int at, string fault)
    {
        if (_fault is null)
        {
            _fault = fault;
            _faultAt = at;
        }
    }
}
