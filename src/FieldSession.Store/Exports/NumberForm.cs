using System.Globalization;

namespace FieldSession.Store.Exports;

/// <summary>The form in which numbers and times of day are written while something is done.</summary>
public static class NumberForm
{
    /// <summary>Does something, such as writing a file, in the form of files: with a point and a 24-hour clock, whatever the screens of a user show.</summary>
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
