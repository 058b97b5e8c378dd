using System.Globalization;

namespace FieldSession.Store.Exports;

/// <summary>The form of numbers and times in files: with a point and a 24-hour clock, whatever the screens of a user show.</summary>
internal static class FileForm
{
    /// <summary>Does something, such as writing a file, in that form.</summary>
    public static T Of<T>(Func<T> act)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
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
