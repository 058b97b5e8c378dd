using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journaling;

/// <summary>A folder of this computer for one test, gone afterwards.</summary>
internal sealed class Folder : IDisposable
{
    public Folder() => Directory.CreateDirectory(Path);

    public string Path { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "fieldsession-" + Guid.NewGuid().ToString("N"));

    public string Study => this["day.study"];

    public string Text => this["day.journal"];

    public string this[string name] => System.IO.Path.Combine(Path, name);

    public string[] Names => [.. Directory.GetFiles(Path).Select(file => System.IO.Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    public StudyFile Open() => StudyFile.Open(Study, new StoppedClock());

    public List<Line> Write(int count)
    {
        List<Line> lines = SomeLines.Of(count);
        using StudyFile study = StudyFile.Create(Study, new StoppedClock());
        lines.ForEach(study.Append);
        return lines;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
