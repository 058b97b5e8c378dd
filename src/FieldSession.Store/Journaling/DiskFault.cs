using System.Runtime.ExceptionServices;

namespace FieldSession.Store.Journaling;

/// <summary>The first fault of the disk under LiteDB, shared by its data file and its log.</summary>
internal sealed class DiskFault
{
    private Exception? _first;

    /// <summary>A disk that takes nothing at all.</summary>
    public static DiskFault FromTheBeginning() => new() { _first = new IOException(FileOnDiskWords.FileIsOnlyLookedAt) };

    /// <summary>Whether one happened.</summary>
    public bool Happened => _first is not null;

    /// <summary>Runs a step on the disk unless a fault happened before, and notes one that happens now, also that LiteDB went astray.</summary>
    public void Watch(Action step)
    {
        try
        {
            if (!Happened)
            {
                step();
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            _first = fault;
        }
    }

    /// <summary>Throws the fault, if one happened.</summary>
    public void ThrowIfHappened()
    {
        if (_first is not null)
        {
            ExceptionDispatchInfo.Throw(_first);
        }
    }
}
