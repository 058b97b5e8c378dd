namespace FieldSession.Store.Exports;

/// <summary>An export can't be written where it was asked for. The message names the file, what is wrong, and what to do.</summary>
/// <param name="message">The message.</param>
/// <param name="cause">What the system said; null: nothing.</param>
public sealed class ExportRefusedException(string message, Exception? cause = null) : IOException(message, cause);
