namespace FieldSession.Store.Journaling;

/// <summary>
/// A step that goes through LiteDB, or tidies up behind a fault that is told anyway. On damaged pages LiteDB 5.0.21 throws not only its own
/// exception but whatever its parsers meet (format, range, argument, encoding, not supported, not implemented), so nothing narrower can be
/// caught. The text is safe whatever happens here.
/// </summary>
internal static class Attempt
{
    /// <summary>What went wrong; null: nothing.</summary>
    public static Exception? Of(Action step)
    {
        try
        {
            step();
            return null;
        }
        catch (Exception fault)
        {
            return fault;
        }
    }
}
