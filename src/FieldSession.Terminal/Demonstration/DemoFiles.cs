using System.Reflection;

namespace FieldSession.Terminal.Demonstration;

/// <summary>The demo's own files, carried inside the program.</summary>
internal static class DemoFiles
{
    /// <summary>The text of a demo file, such as "quillmere/plan.toml".</summary>
    /// <exception cref="FileNotFoundException">The program was built without it.</exception>
    public static string Text(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"demo/{name}")
            ?? throw new FileNotFoundException(DemoWords.FileNotInProgram(name), name);
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    /// <summary>The lines of a demo file.</summary>
    public static string[] Lines(string name) => Text(name).Split('\n', StringSplitOptions.TrimEntries);
}
