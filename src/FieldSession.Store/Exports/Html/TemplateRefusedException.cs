namespace FieldSession.Store.Exports.Html;

/// <summary>A template can't be used. The message names it, where it is wrong, and what to do.</summary>
/// <param name="message">The message.</param>
/// <param name="cause">What the library or the system said; null: nothing.</param>
public sealed class TemplateRefusedException(string message, Exception? cause = null) : IOException(message, cause);
