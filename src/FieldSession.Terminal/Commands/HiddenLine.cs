namespace FieldSession.Terminal.Commands;

/// <summary>Reads a line that nobody is to see: nothing of it is shown while it is typed.</summary>
internal static class HiddenLine
{
    /// <summary>The line; null: the input has ended.</summary>
    /// <param name="readKey">Waits for the next key without showing it.</param>
    /// <param name="messages">Where the line ends visibly.</param>
    public static string? Read(Func<ConsoleKeyInfo> readKey, TextWriter messages)
    {
        List<char> typed = [];
        while (true)
        {
            ConsoleKeyInfo key = readKey();
            switch (key.Key)
            {
                case ConsoleKey.Enter:
                    messages.WriteLine();
                    return string.Concat(typed);
                case ConsoleKey.Backspace when typed.Count > 0:
                    typed.RemoveAt(typed.Count - 1);
                    break;
                case ConsoleKey.D when key.Modifiers == ConsoleModifiers.Control:
                    return null;
                default:
                    if (!char.IsControl(key.KeyChar))
                    {
                        typed.Add(key.KeyChar);
                    }

                    break;
            }
        }
    }
}
