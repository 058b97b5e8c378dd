using System.Globalization;

namespace FieldSession.Store.Exports;

/// <summary>A file of an export.</summary>
/// <param name="name">Its name, with its extension.</param>
/// <param name="description">What it holds, in one or two sentences.</param>
public abstract class ExportFile(string name, string description)
{
    /// <summary>Its name, with its extension.</summary>
    public string Name { get; } = name;

    /// <summary>What it holds, in one or two sentences.</summary>
    public string Description { get; } = description;

    /// <summary>Its media type.</summary>
    public abstract string MediaType { get; }

    /// <summary>Whether a study has this file at all.</summary>
    public virtual bool IsIn(ExportSource source) => true;

    /// <summary>Why the file must not be written now although there is something to write; null: nothing rules it out.</summary>
    public virtual string? HiddenBecause(ExportSource source) => null;

    /// <summary>The file's bytes, UTF-8.</summary>
    public abstract byte[] BytesOf(ExportSource source);
}

/// <summary>A file of an export that is written in one piece.</summary>
/// <param name="name">Its name, with its extension.</param>
/// <param name="mediaType">Its media type.</param>
/// <param name="description">What it holds.</param>
/// <param name="write">Gives its bytes.</param>
internal sealed class WrittenFile(string name, string mediaType, string description, Func<ExportSource, byte[]> write)
    : ExportFile(name, description)
{
    /// <inheritdoc/>
    public override string MediaType => mediaType;

    /// <summary>Says whether a study has it; by default every study has.</summary>
    public Func<ExportSource, bool> Is { get; init; } = _ => true;

    /// <summary>Says why it is hidden; by default it never is.</summary>
    public Func<ExportSource, string?> Hidden { get; init; } = _ => null;

    /// <inheritdoc/>
    public override bool IsIn(ExportSource source) => Is(source);

    /// <inheritdoc/>
    public override string? HiddenBecause(ExportSource source) => Hidden(source);

    /// <inheritdoc/>
    public override byte[] BytesOf(ExportSource source) => write(source);
}

/// <summary>The form in which numbers and times of day are written while something is done.</summary>
public static class NumberForm
{
    /// <summary>
    /// Does something, such as writing a file, in the form of files: with a point and a 24-hour clock, whatever the screens of a user show.
    /// </summary>
    public static T OfFiles<T>(Func<T> act) => Of(CultureInfo.InvariantCulture, act);

    /// <summary>Does something in a form, and goes back to the one before.</summary>
    public static T Of<T>(CultureInfo form, Func<T> act)
    {
        ArgumentNullException.ThrowIfNull(act);
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = form;
        try
        {
            return act();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
