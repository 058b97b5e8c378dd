using System.Collections.Immutable;
using System.Globalization;
using System.Security;
using System.Text;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>
/// A screen drawn as SVG: each stretch of one look is a text in a fixed pitch, so that it reads and can be copied like the screen.
/// </summary>
internal static class ScreenPicture
{
    private const double ColumnPixels = 8.4;
    private const int RowPixels = 18;
    private const int Edge = 12;
    private const int Baseline = 14;

    /// <summary>One screen.</summary>
    /// <param name="title">What the picture shows, for whoever does not see it.</param>
    /// <param name="screen">The rows of the screen.</param>
    public static string Of(string title, ImmutableArray<ImmutableArray<StyledText>> screen) => Framed(title, screen, Rows(screen));

    /// <summary>Screens one after the other, each for so many seconds, again and again.</summary>
    /// <param name="title">What the picture shows.</param>
    /// <param name="screens">The screens, and how long each is shown.</param>
    public static string Moving(string title, ImmutableArray<(ImmutableArray<ImmutableArray<StyledText>> Screen, double Seconds)> screens)
    {
        double all = screens.Sum(one => one.Seconds);
        StringBuilder text = new();
        double from = 0;
        foreach ((ImmutableArray<ImmutableArray<StyledText>> screen, double seconds) in screens)
        {
            double to = from + seconds;
            string times =
                from == 0 ? $"0;{Number(to / all)}"
                : to >= all - 1e-9 ? $"0;{Number(from / all)}"
                : $"0;{Number(from / all)};{Number(to / all)}";
            string shown =
                from == 0 ? "visible;hidden"
                : to >= all - 1e-9 ? "hidden;visible"
                : "hidden;visible;hidden";
            text.Append(
                CultureInfo.InvariantCulture,
                $"<g visibility=\"{(from == 0 ? "visible" : "hidden")}\"><animate attributeName=\"visibility\" "
                    + $"calcMode=\"discrete\" dur=\"{Number(all)}s\" repeatCount=\"indefinite\" keyTimes=\"{times}\" "
                    + $"values=\"{shown}\"/>\n{Rows(screen)}</g>\n"
            );
            from = to;
        }

        return Framed(title, screens[0].Screen, text.ToString());
    }

    private static string Framed(string title, ImmutableArray<ImmutableArray<StyledText>> screen, string rows)
    {
        string width = Number((screen.Max(row => row.Sum(stretch => stretch.Text.Length)) * ColumnPixels) + (2 * Edge));
        int height = (screen.Length * RowPixels) + (2 * Edge);
        return $"""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" role="img" aria-label="{SecurityElement.Escape(
                title
            )}" font-family="ui-monospace, 'DejaVu Sans Mono', Menlo, Consolas, monospace" font-size="14" fill="#d7dde2">
            <title>{SecurityElement.Escape(title)}</title>
            <rect width="{width}" height="{height}" rx="8" fill="#14191d"/>
            {rows}</svg>

            """;
    }

    private static string Rows(ImmutableArray<ImmutableArray<StyledText>> screen)
    {
        StringBuilder text = new();
        for (int row = 0; row < screen.Length; row++)
        {
            int column = 0;
            foreach (StyledText stretch in screen[row])
            {
                text.Append(Drawn(stretch, row, column));
                column += stretch.Text.Length;
            }
        }

        return text.ToString();
    }

    private static string Drawn(StyledText stretch, int row, int column)
    {
        string words = stretch.Text.TrimEnd();
        string x = Number(Edge + (column * ColumnPixels));
        string ground = stretch.Look is Look.Reverse or Look.Alarm
            ? $"<rect x=\"{x}\" y=\"{Edge + (row * RowPixels)}\" width=\"{Number(stretch.Text.Length * ColumnPixels)}\" "
                + $"height=\"{RowPixels}\" fill=\"{(stretch.Look == Look.Alarm ? "#b3261e" : "#d7dde2")}\"/>\n"
            : "";
        string look = stretch.Look switch
        {
            Look.Strong => " font-weight=\"bold\" fill=\"#fff\"",
            Look.Reverse => " fill=\"#14191d\"",
            Look.Alarm => " font-weight=\"bold\" fill=\"#fff\"",
            _ => "",
        };
        return words.Length == 0
            ? ground
            : $"{ground}<text x=\"{x}\" y=\"{Edge + (row * RowPixels) + Baseline}\" "
                + $"textLength=\"{Number(words.Length * ColumnPixels)}\" "
                + $"xml:space=\"preserve\"{look}>{SecurityElement.Escape(words)}</text>\n";
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
