namespace FieldSession.Terminal.Commands;

/// <summary>Standard output takes no more: what was asked for is not printed whole.</summary>
internal sealed class OutputRefusedException(Exception cause) : IOException(CommandWords.OutputIsNotWhole(cause.Message), cause);
