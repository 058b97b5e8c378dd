using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The last acts, newest below, each with the number of its journal line.</summary>
internal static class ActsBlock
{
    private const int NumberColumns = 6;
    private const int MostActs = 8;

    /// <summary>At most so many rows; an act takes several of them where it may be wrapped.</summary>
    public static IEnumerable<PageRow> Rows(DriveSight sight, int columns, int rows, bool wrapped)
    {
        int from = sight.Study.RunOn?.Started.Place ?? 0;
        return sight.Acts.Since(from).TakeLast(MostActs).SelectMany(act => Rows(act, columns, wrapped)).TakeLast(rows);
    }

    private static IEnumerable<PageRow> Rows(Act act, int columns, bool wrapped)
    {
        string words = act.Echo.Doubt is null ? act.Echo.Words : $"? {act.Echo.Words}";
        int room = columns - NumberColumns;
        string number = $"{act.Number,4}  ";
        foreach (string line in wrapped ? Wrapped.Lines(words, room) : [Columns.Cut(words, room)])
        {
            yield return PageRow.Of(Columns.Left(number, NumberColumns), Ink.Quiet).And(line);
            number = "";
        }
    }
}
