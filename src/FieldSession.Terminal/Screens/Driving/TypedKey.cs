namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What becomes of a typed character.</summary>
internal enum TypedKind
{
    /// <summary>It goes into the box where the cursor is.</summary>
    Goes,

    /// <summary>The box holds another text now.</summary>
    Becomes,

    /// <summary>A line is written at once, without Enter.</summary>
    Writes,

    /// <summary>It shows that the keys before were letters of a word: what they did is taken back and the word is in the box.</summary>
    Corrects,

    /// <summary>It shows that a key is held down: it counts once.</summary>
    IsHeld,

    /// <summary>It begins the next reading: what is in the box is whole and is stored first.</summary>
    StoresFirst,

    /// <summary>It begins the next reading: what is in the box is set aside.</summary>
    SetsAside,

    /// <summary>It asks for the help.</summary>
    AsksHelp,

    /// <summary>It means nothing here; there may be words about it.</summary>
    Nothing,
}

/// <summary>What becomes of a typed character, and the text, the line or the words about it.</summary>
/// <param name="Kind">What becomes of it.</param>
/// <param name="Text">The box's new text, the line to write, or words for the crew.</param>
/// <param name="Begun">The character, where it may yet turn out to be a letter of a word; empty: it can't.</param>
internal readonly record struct TypedKey(TypedKind Kind, string Text = "", string Begun = "");
