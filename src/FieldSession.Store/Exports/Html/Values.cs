using FieldSession.Reporting;
using Fluid;
using Fluid.Values;

namespace FieldSession.Store.Exports.Html;

/// <summary>Puts words, lists and named parts into the values of the template library, without its looking at types.</summary>
internal static class Values
{
    /// <summary>Words of a report, with marks in place of what can't be seen.</summary>
    public static FluidValue Text(string words) => new StringValue(VisibleText.Of(words));

    /// <summary>Something drawn by the program, as it is.</summary>
    public static FluidValue Drawn(string markup) => new StringValue(markup, encode: false);

    /// <summary>Yes or no.</summary>
    public static FluidValue Truth(bool value) => BooleanValue.Create(value);

    /// <summary>A list.</summary>
    public static FluidValue List(IEnumerable<FluidValue> values) => new ArrayValue([.. values]);

    /// <summary>Named parts.</summary>
    public static FluidValue Parts(params (string Name, FluidValue Value)[] parts) => new DictionaryValue(new Named(parts));

    private sealed class Named((string Name, FluidValue Value)[] parts) : IFluidIndexable
    {
        public int Count => parts.Length;

        public IEnumerable<string> Keys => parts.Select(part => part.Name);

        public bool TryGetValue(string name, out FluidValue value)
        {
            value =
                parts.FirstOrDefault(part => part.Name == name).Value
                ?? throw new FluidException(PageWords.NameIsNotHere(name, string.Join(", ", Keys)));
            return true;
        }
    }
}

/// <summary>What the report's page says beside the report.</summary>
internal static class PageWords
{
    // the template
    public const string OwnTemplate = "the program's own template";

    public static string NotTemplate(string name, string fault) =>
        $"{name}: this is not a template ({fault}). Nothing was written. 'fieldsession report --template-out FILE' writes "
        + "one to start from.";

    public static string TemplateCantBeRead(string path, Exception fault) =>
        $"{path}: can't be read as a template ({fault.Message}). Nothing was written. Give a text file in UTF-8.";

    public static string TemplateAsksForFile(string name, FileNotFoundException fault) =>
        $"{name}: it asks for another file, '{fault.Message}'. Nothing was written. A template is one file: put the text into it.";

    public static string TemplateNeverEnds(string name, int mostSteps) =>
        $"{name}: it never ends, or takes more than {mostSteps} steps. Nothing was written. Look at its loops.";

    public static string TemplateNamesUnknown(string name, Exception fault) =>
        $"{name}: {fault.Message.TrimEnd('.')}. Nothing was written. 'fieldsession help report' lists what a template may name.";

    public static string NameIsNotHere(string name, string known) => $"there is no '{name}' here, but {known}";

    // pieces of the page
    public static string ExcerptNote(string words) =>
        $"<p role=\"note\" style=\"margin:0;padding:.6em 1em;border:3px solid;background:#fff;color:#1f262c;font-weight:bold\">{words}</p>";

    public static string Dot(string across, string up) => $"<circle cx=\"{across}\" cy=\"{up}\" r=\"1.7\"/>";

    public static string SmallLine(double width, double height, string points, string dots) =>
        $"<svg class=\"line\" aria-hidden=\"true\" viewBox=\"0 0 {width:0} {height:0}\"><polyline points=\"{points}\"/>{dots}</svg>";

    public const string EveryReading = "every reading, a row a segment and a column a run";
    public const string LogoForm = "an SVG drawing without scripts, without styles and without anything from outside";

    public static string IsExcerpt(string missing) =>
        $"This is an excerpt of the report. It leaves out words of: {missing}. Ask for the whole report before you rely on it.";

    public static string LogoIsRefused(string path, string fault) => $"{path}: {fault}. Nothing was written. Give {LogoForm}.";

    public static string LogoIsNoSvg(string path, Exception fault) =>
        $"{path}: this is not an SVG ({fault.Message}). Nothing was written. Give {LogoForm}.";

    public static string LogoHolds(string what) => $"the logo holds '{what}'";

    public static string NoSuchPart(string path, int line, string name, string known) =>
        $"{path}, line {line}: there is no part '{name}'. Nothing was written. The parts are {known}.";

    public static string FolderHoldsNothing(string path) =>
        $"{path}: it holds no report.html.liquid, logo.svg or sections.txt. Nothing was written. 'fieldsession help "
        + "report' says what they are.";

    // the plots
    private const string Gap = "\u00a0\u00a0\u00a0\u00a0\u00a0\u00a0\u00a0\u00a0";

    public static string Directions(IntervalChart chart) =>
        $"\u2190\u00a0{chart.Ends.Below}{Gap}{chart.Unit}{Gap}{chart.Ends.Above}\u00a0\u2192";

    public const string MiddleOfRunAxis = "middle of the run, UTC";
    public const string MeanLevelAxis = "mean level, dB(A)";
    public const string KeyToIntervals = "; bar: its 95 % interval";
    public const string KeyToMargins = "; shaded: the margin that does not matter";
    public const string FrequencyAxis = "frequency, Hz";
    public const string DensityAxis = "level, dB per Hz";
    public const string KeyToSpectra =
        "A line a spec, in a ribbon: 95 % over its runs, one frequency at a time. Shaded across: the ring band.";
    public const string KeyToRunLevels = "A mark a run, with its number.";
    public const string KeyToRunLevelsWithDrift =
        "A mark a run, with its number; broken lines: the drift of the day on one and the same spec.";
}
