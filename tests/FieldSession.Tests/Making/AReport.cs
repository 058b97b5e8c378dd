using AngleSharp.Html.Dom;
using AngleSharp.Html.Dom.Events;
using AngleSharp.Html.Parser;
using FieldSession.Driving;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Tests.Making;

/// <summary>Reports to look at: of the demos as the command writes them, and of a short day with names of one's own.</summary>
internal static class AReport
{
    public const string HeadHash = "00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee";

    /// <summary>Both files of a demo's report, as 'demo --replay' writes them.</summary>
    public static (string Markdown, string Html) OfDemo(string name)
    {
        using AtThePrompt prompt = new();
        prompt.Must(0, ["demo", name, "--replay", "--out", prompt.Here("demo")], passphrase: null);
        return (File.ReadAllText(prompt.Here("demo/report.md")), File.ReadAllText(prompt.Here("demo/report.html")));
    }

    /// <summary>
    /// The report of a short day with the key open, driven with the same numbers whatever things are called. Every name and note is what
    /// <paramref name="called"/> makes of a plain one.
    /// </summary>
    public static Report Of(Func<string, string> called)
    {
        ADay day = new ADay(
            ADay.ShortPlan with
            {
                StudyName = called("T-1"),
                Question = called("Is it louder?"),
                Protocol = called("windows shut"),
                PricePremium = 96,
                Currency = called("units"),
                Route =
                [
                    ADay.ASegment(1, called("Mill lane"), "smooth"),
                    ADay.ASegment(2, called("Quarry road"), "coarse"),
                    ADay.ASegment(3, called("Bridge joint"), "impact"),
                ],
            }
        ).Ready();
        day.Typed("run 417", "5860", "6365", "714", "run 862", "5961", "6466", "72", "run 417", "5860");
        Assert.True(day.Book.Write(new NoteMade(called("a note"))).IsWritten);
        day.Typed("6465", "715", "calibration after 93.9", "predict Tam feature=862 sure=3", "predict Ro feature=417 sure=5");
        KeyOpened opened = Opened(called("CONTROL"), called("CANDIDATE"));
        Assert.True(day.Book.Write(opened).IsWritten);
        return DayReport.Of(day.Study, OpenedKey.In(day.Book.Entries), new Provenance(day.Book.Lines.Count, HeadHash, "9.8.7"));
    }

    /// <summary>A page read by the rules of the HTML standard; whatever a browser would have to fix is a failure here.</summary>
    public static IHtmlDocument Read(string html)
    {
        List<string> faults = [];
        HtmlParser parser = new(new HtmlParserOptions { IsKeepingSourceReferences = true });
        parser.Error += (_, found) =>
        {
            HtmlErrorEvent error = (HtmlErrorEvent)found;
            faults.Add(
                $"line {error.Position.Line}, column {error.Position.Column}: {error.Message} {html.Split('\n')[error.Position.Line - 1]}"
            );
        };
        IHtmlDocument page = parser.ParseDocument(html);
        Assert.Empty(faults);
        return page;
    }

    private static KeyOpened Opened(string control, string candidate) =>
        new(
            [new CodedSpec(new SpecCode("417"), control), new CodedSpec(new SpecCode("862"), candidate)],
            control,
            null,
            null,
            [new MarkRead(new SpecCode("417"), control), new MarkRead(new SpecCode("862"), candidate)],
            ["Ro", "Ilse"]
        );
}
