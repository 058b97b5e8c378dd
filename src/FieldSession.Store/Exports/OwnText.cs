using System.Reflection;
using System.Text;

namespace FieldSession.Store.Exports;

/// <summary>Texts that the program carries along, such as its templates.</summary>
internal static class OwnText
{
    /// <summary>The whole text.</summary>
    /// <param name="name">Its name in the program.</param>
    /// <exception cref="FileNotFoundException">The program was built without it.</exception>
    public static string Of(string name)
    {
        using Stream stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new FileNotFoundException(ExportWords.OwnTextIsMissing(name));
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
