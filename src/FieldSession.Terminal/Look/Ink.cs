namespace FieldSession.Terminal.Look;

/// <summary>What a piece of text is for. A palette says how that looks; the words alone must say everything.</summary>
internal enum Ink
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>What the eye should find first: names and figures.</summary>
    Strong,

    /// <summary>What can wait: labels, covered rows.</summary>
    Quiet,

    /// <summary>What must be seen: not saved, refused, doubtful.</summary>
    Alarm,

    /// <summary>Header and footer.</summary>
    Bar,
}
