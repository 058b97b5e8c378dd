using System.Text.Json;

namespace FieldSession.Journal;

/// <summary>
/// Reading what this program may not have written. A line of ours can always be read back; one made by another hand, with
/// the right hash over wrong figures, is refused by its number, whichever kind it claims to be and wherever it goes wrong.
/// </summary>
internal static class AnotherHand
{
    /// <summary>What a line says.</summary>
    /// <param name="line">The line.</param>
    /// <param name="read">Reads it: its entry, what the entry does to the study, or what is said to it.</param>
    /// <exception cref="InvalidDataException">The line is whole, but no program of ours can have written it.</exception>
    public static T Told<T>(Line line, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception fault) when (IsOfFigures(fault))
        {
            throw new InvalidDataException(JournalWords.LineMadeByAnotherHand(line, fault), fault);
        }
    }

    // Whatever wrong figures can bring about in code that trusts them; what the computer lacks (memory, a disk) is not among it.
    private static bool IsOfFigures(Exception fault) =>
        fault
            is JsonException
                or FormatException
                or ArgumentException
                or ArithmeticException
                or InvalidOperationException
                or NotSupportedException
                or InvalidCastException
                or KeyNotFoundException
                or IndexOutOfRangeException
                or NullReferenceException;
}
