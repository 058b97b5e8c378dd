using System.Collections.Immutable;
using System.Text;
using FieldSession.State;
using Terminal.Gui.Input;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// The box of the drive screen. It asks what becomes of each character; editing, cursor and paste are those of every box.
/// </summary>
internal sealed class EntryBox : TypingBox
{
    /// <summary>What becomes of a typed character, given the text in the box.</summary>
    public required Func<string, char, TypedKey> Press { get; init; }

    /// <summary>What is done with words, a line or the wish for help that came of a character.</summary>
    public required Action<TypedKey> Act { get; init; }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (key.IsCtrl || key.IsAlt || !key.TryGetPrintableRune(out Rune rune))
        {
            // Ctrl+Z would take back a letter of what is typed; a slip of the finger must not.
            return key == Key.Z.WithCtrl || base.OnKeyDown(key);
        }

        return OnTyped(key, rune);
    }

    private bool OnTyped(Key key, Rune rune)
    {
        // Beyond the basic plane there are no keys that act.
        TypedKey pressed = rune.IsBmp ? Press(Text, (char)rune.Value) : new TypedKey(TypedKind.Goes);
        switch (pressed.Kind)
        {
            case TypedKind.Goes:
                Act(new TypedKey(TypedKind.Nothing));
                return base.OnKeyDown(key);
            case TypedKind.Becomes:
                Act(new TypedKey(TypedKind.Nothing));
                Put(pressed.Text);
                return true;
            default:
                Act(pressed);
                return true;
        }
    }
}

/// <summary>Completes a line of words that has been begun in the box.</summary>
internal static class WordsBegun
{
    private const int LettersOfWord = 2;

    /// <summary>
    /// The box's text with its first word completed to one that can be written now; the same text where none fits. Once more, it is
    /// the next word that begins with the same two letters.
    /// </summary>
    public static string Completed(string text, Study study)
    {
        string begun = Typing.LineOf(text);
        ImmutableArray<string> lines = Lines(study);
        int whole = begun.Length == 0 ? -1 : lines.IndexOf(lines.FirstOrDefault(line => Same(line.Trim(), begun), ""));
        string? next =
            whole < 0
                ? lines.FirstOrDefault(line => line.StartsWith(begun, StringComparison.OrdinalIgnoreCase))
                : lines[(whole + 1)..]
                    .Concat(lines[..whole])
                    .FirstOrDefault(line =>
                        line.StartsWith(begun[..Math.Min(LettersOfWord, begun.Length)], StringComparison.OrdinalIgnoreCase)
                    );
        return next is null || (whole < 0 && begun.Contains(' ', StringComparison.Ordinal)) ? text : $":{next}";
    }

    // What is due is first, so that an empty box, or one letter, is completed to that; then every word that can be of use now.
    private static ImmutableArray<string> Lines(Study study)
    {
        string run = study.CodeAsked is { } code ? $"run {code}" : "run ";
        string[] due = study switch
        {
            { RunOn: not null } => ["seg ", "end", "flag "],
            { SessionOn: null } => ["calibration before ", "weather ", run, "override ", "flag "],
            { OrderDriven: true } => ["calibration after ", run, "flag ", "weather "],
            { Weather.Count: 0 } => ["weather ", run, "calibration before ", "override "],
            _ => [run, "weather ", "calibration after ", "flag ", "override "],
        };
        string[] said = [.. due.Select(line => line.Split(' ')[0])];
        return [.. due, .. VerbTable.UsableIn(study).Where(verb => !said.Contains(verb.Word)).Select(verb => verb.Begun)];
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
