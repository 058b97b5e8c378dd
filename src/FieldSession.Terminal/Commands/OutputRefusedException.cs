namespace FieldSession.Terminal.Commands;

/// <summary>Standard output takes no more: what was asked for is not printed whole.</summary>
internal sealed class OutputRefusedException(IOException cause) : IOException(CommandWords.OutputIsNotWhole(cause.Message), cause);
