using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The last acts, newest below, each with the number of its journal line.</summary>
internal static class ActsBlock
{
    /// <summary>At most so many rows.</summary>
    public static IEnumerable<PageRow> Rows(DriveSight sight, int columns, int rows)
    {
        int from = sight.Study.RunOn?.Started.Number ?? 0;
        return sight.Acts.Since(from).TakeLast(rows).Select(act => PageRow
            .Of($"{act.Number,4}  ", Ink.Quiet)
            .And(Columns.Cut(act.Echo.Doubt is null ? act.Echo.Words : $"? {act.Echo.Words}", columns - 6)));
    }
}
