namespace FieldSession.Tests.Making;

/// <summary>Neighbouring letters of a row that look alike.</summary>
/// <param name="Text">The letters.</param>
/// <param name="Look">How they look.</param>
internal sealed record StyledText(string Text, Look Look);

/// <summary>How a letter on the screen looks.</summary>
internal enum Look
{
    /// <summary>As ordinary text.</summary>
    Plain,

    /// <summary>Bold.</summary>
    Strong,

    /// <summary>Dark on light, as header and footer are.</summary>
    Reverse,

    /// <summary>What must be seen.</summary>
    Alarm,
}
