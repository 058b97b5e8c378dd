using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>
/// A day of two fittings by two people who share nothing but what they hand over: the custodian learns what to fit from the fitting
/// list alone, the crew gets slips with a code and the public files. The tyres are real: what is on the car decides what the meter
/// shows and which mark is under the tape.
/// </summary>
public sealed partial class CustodianAndCrewTests : IDisposable
{
    private const string Passphrase = "four quiet words here";
    private const string Control = "ZWIEBELTURM";
    private const string Candidate = "KRAKENSPUR";

    private readonly OnesOwnHome _custodian = new();
    private readonly OnesOwnHome _crew = new();
    private readonly Dictionary<string, string> _underTape = [];
    private readonly Dictionary<string, string> _fitted = [];

    public void Dispose()
    {
        _custodian.Dispose();
        _crew.Dispose();
    }

    [Fact]
    public void The_marks_agree_the_names_are_in_the_headline_and_the_crew_never_held_a_name_or_a_mark()
    {
        Plan(_custodian);
        Plan(_crew);
        _custodian.Write("specs.txt", $"{Control}\n{Candidate}\n");
        Custodian("seal", "plan", "--specs", "specs.txt", "--key", "a.key", "--public", "a.codes", "--draw-marks");
        File.Delete(_custodian.Here("specs.txt"));
        _crew.Run(0, ["start", "plan", "day.study"]);
        Drive("a", 1, 3);
        Custodian("seal", "plan", "--after", "a.key", "--from-run", "4", "--key", "b.key", "--public", "b.codes");
        Drive("b", 4, 6);
        string[] codes = [.. _fitted.Keys];
        Assert.Equal(4, codes.Length);
        Evening(codes[1]);
        AssertTheCrewKnowsNothing();
        Reveal(codes);
    }

    private static void Plan(OnesOwnHome home)
    {
        home.Write("plan/plan.toml", AWholeDay.Plan);
        home.Write("plan/route.csv", AWholeDay.Route);
    }

    // The crew takes the public file in; then before each run the custodian fits by the list and hands over a slip.
    private void Drive(string fitting, int from, int to)
    {
        _crew.Receive(_custodian, $"{fitting}.codes");
        _crew.Run(0, ["codes", "day.study", $"{fitting}.codes"]);
        Assert.Contains("ok  it is the key of the codes in", Custodian("keycheck", $"{fitting}.key", "--public", $"{fitting}.codes"));
        Dictionary<int, (string Code, string Spec, string Mark)> list = List()
            .Matches(Custodian("fitting", $"{fitting}.key", "--print"))
            .ToDictionary(
                row => int.Parse(row.Groups[1].Value, CultureInfo.InvariantCulture),
                row => (row.Groups[2].Value, row.Groups[3].Value, row.Groups[4].Value)
            );
        Assert.Equal(Enumerable.Range(from, 7 - from), list.Keys.Order());
        for (int run = from; run <= to; run++)
        {
            (string code, string spec, string mark) = list[run];
            Assert.Equal(mark, _underTape.GetValueOrDefault(spec, mark));
            (_underTape[spec], _fitted[code]) = (mark, spec);
            string said = _crew.Run(0, ["enter", "day.study"], $"{(run == 1 ? AWholeDay.Ready : "")}run {code}\n{Readings(run, spec)}");
            Assert.DoesNotContain(" ? ", said);
        }
    }

    private static string Readings(int run, string onTheCar)
    {
        double more = (onTheCar == Candidate ? 2 : 0) + ((run - 1) % 3 * 0.2);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{60 + more:0.0}-{62 + more:0.0}\n{64 + more:0.0}-{66 + more:0.0}\n{71 + more:0.0}\n"
        );
    }

    private void Evening(string feature)
    {
        _crew.Run(0, ["enter", "day.study"], "calibration after 94.0\n");
        _crew.Run(0, ["review", "day.study"]);
        _crew.Run(0, ["compare", "day.study", "--json"]);
        _crew.Run(0, ["export", "day.study", "--out", "before"]);
        _crew.Run(0, ["predict", "day.study", "--lock", $"Ro feature={feature} sure=4", "--lock", $"Tam feature={feature} sure=2"]);
        _crew.Run(0, ["report", "day.study", "--out", "blind"]);
        _crew.Run(0, ["verify", "day.study"]);
    }

    private void AssertTheCrewKnowsNothing()
    {
        string[] names = [Control, Candidate];
        Assert.Empty(Leak.FilesWith(_crew.Path, names));
        Assert.Empty(Leak.FilesWithMark(_crew.Path, _underTape.Values));
        string all = _crew.Said + _crew.Given;
        Assert.All(names, name => Assert.DoesNotContain(name, all, StringComparison.OrdinalIgnoreCase));
        Assert.All(_underTape.Values, mark => Assert.DoesNotMatch($"(?<![A-Za-z0-9]){mark}(?![A-Za-z0-9])", all));
        Assert.DoesNotContain(Passphrase, all);
        Assert.DoesNotContain(Directory.GetFiles(_crew.Path, "*.key"), _ => true);
        Assert.True(Directory.GetFiles(_crew.Path, "*", SearchOption.AllDirectories).Length > 20);
        // the search would find them where they are
        Assert.Contains(Candidate, _custodian.Said);
        Assert.All(_underTape.Values, mark => Assert.Matches(mark, _custodian.Said));
    }

    // The custodian brings the keys; two people take the tape off.
    private void Reveal(string[] codes)
    {
        _crew.Receive(_custodian, "a.key");
        _crew.Receive(_custodian, "b.key");
        StringBuilder read = new();
        string[] marks = [.. codes.SelectMany(code => new[] { "--mark", $"{code}={_underTape[_fitted[code]]}" })];
        read.Append(
            _crew.Run(
                0,
                ["reveal", "day.study", "--key", "a.key", "--key", "b.key", .. marks, "--reader", "Ro", "--reader", "Ilse"],
                passphrase: Passphrase
            )
        );
        Assert.Contains("it gives the published commitment; the marks on the tyres agree", read.ToString());
        Assert.All(codes, code => Assert.Contains($"{code} {_fitted[code]}", read.ToString()));
        _crew.Run(0, ["report", "day.study", "--out", "report"]);
        string report = File.ReadAllText(_crew.Here("report/report.md"));
        Assert.Matches($@"{Candidate} \(\d\d\d, \d\d\d\) against {Control} \(\d\d\d, \d\d\d\)", report);
        Assert.Matches(@"\| steady \| clean \| \+(1\.9|2\.0|2\.1) \|", report);
        Assert.DoesNotContain("are withheld", report);
        _crew.Run(0, ["verify", "day.study"]);
    }

    private string Custodian(params string[] words) => _custodian.Run(0, words, passphrase: Passphrase);

    [GeneratedRegex(@"run (\d) of 6:  code (\d\d\d)  ([A-Z]+), mark ([A-Z]{4})")]
    private static partial Regex List();
}
