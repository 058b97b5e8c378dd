namespace FieldSession.Terminal.Look;

/// <summary>How the names and figures that have to be found at a glance are written.</summary>
internal enum LetterForm
{
    /// <summary>As large as there is room, by block letters.</summary>
    Block,

    /// <summary>As ordinary text in one row, which a screen reader can say.</summary>
    Plain,
}
