using System.Text.RegularExpressions;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Revealing;

public sealed class EveryFittingIsOpenedByItsOwnKey : IDisposable
{
    private readonly AtThePrompt _prompt;
    private readonly Dictionary<SpecCode, string> _specs = [];

    public EveryFittingIsOpenedByItsOwnKey()
    {
        _prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready);
        Learn("a.key");
        _prompt.Drive(3, IsBeta);
        _prompt.Must(0, ["seal", _prompt.Study, "--specs", _prompt.Here("specs.txt"), "--key", _prompt.Here("b.key")]);
        Learn("b.key");
        _prompt.Drive(3, IsBeta).Predict(_prompt.Now().DrivenCodes.First());
    }

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void Before_the_reveal_codes_of_two_fittings_are_compared_as_different_codes_and_the_words_say_so()
    {
        string review = _prompt.Must(0, ["review", _prompt.Study]);
        Assert.Contains("Fitting 2: codes", review);
        Assert.Contains("Only the keys say", review);
        Assert.Contains("Only the keys say", _prompt.Must(0, ["compare", _prompt.Study]));
        Assert.Equal(4, _prompt.Now().DrivenCodes.Count());
        Assert.All(_prompt.Now().DrivenCodes, code => Assert.Contains(code.Digits, review));
    }

    [Theory]
    [InlineData("does not name", "a.key")]
    [InlineData("does not name", "b.key")]
    [InlineData("is in two keys", "a.key", "b.key", "a.key")]
    public void Too_few_keys_or_one_key_twice_open_nothing(string why, params string[] keys)
    {
        Assert.Contains(why, Reveal(1, keys));
        Assert.Null(_prompt.Now().Opening);
    }

    [Theory]
    [InlineData("a.key", "b.key")]
    [InlineData("b.key", "a.key")]
    public void Both_keys_in_any_order_open_it_and_the_report_compares_spec_with_spec(string one, string other)
    {
        Assert.Contains("it gives the published commitment", Reveal(0, one, other));
        Assert.True(_prompt.Now().Opening!.CommitmentHolds);
        string report = _prompt.Must(0, ["report", _prompt.Study, "--out", _prompt.Here("report")]);
        string text = File.ReadAllText(_prompt.Here("report/report.md"));
        Assert.Equal([_prompt.Here("report/report.md"), _prompt.Here("report/report.html")], report.Trim().Split(Environment.NewLine));
        string betas = string.Join(", ", _specs.Where(pair => pair.Value == "BETA").Select(pair => pair.Key));
        string alphas = string.Join(", ", _specs.Where(pair => pair.Value == "ALPHA").Select(pair => pair.Key));
        Assert.Contains($"BETA ({betas}) minus ALPHA ({alphas})", text);
        Assert.Matches(@"\| steady \| clean \| \+(1\.9|2\.0|2\.1) \|", text);
        Assert.Contains("The keys give the published commitments.", text);

        // four codes, two specs: whoever guesses is right one time in two
        Match blind = Regex.Match(text, @"(\d) of 2 named a code of a new spec; guessing alone does as well with p ([\d.]+):");
        Assert.Equal(blind.Groups[1].Value == "2" ? "0.25" : "1", blind.Groups[2].Value);
    }

    [Fact]
    public void While_marks_disagree_the_codes_stay_apart()
    {
        Reveal(1, ["a.key", "b.key"], swapped: true);
        OpenedKey key = OpenedKey.In(Entries())!;
        Assert.False(key.NamesAllowed);
        Report report = DayReport.Of(_prompt.Now(), key, new Provenance(1, "", ""));
        Assert.Equal(4, report.Sections.Single(section => section.Title == "Result").Blocks.OfType<Subheading>().Count());
        Assert.DoesNotContain("BETA", string.Join('\n', report.Sections.Single(section => section.Part == ReportPart.Verdict).Blocks));
    }

    [Fact]
    public void What_was_opened_proves_itself_again_from_the_journal()
    {
        Reveal(0, "a.key", "b.key");
        Assert.Contains("entries, commitment and freeze hold", _prompt.Must(0, ["verify", _prompt.Study]));
    }

    private string Reveal(int code, params string[] keys) => Reveal(code, keys, swapped: false);

    private string Reveal(int code, string[] keys, bool swapped)
    {
        string[] words = _prompt.RevealWords(keys);
        return _prompt.Must(code, !swapped ? words : [.. words.Select(Swapped), "--as-read"]);
    }

    private static string Swapped(string word) =>
        word.Contains("=BETA", StringComparison.Ordinal)
            ? word.Replace("BETA", "ALPHA", StringComparison.Ordinal)
            : word.Replace("=ALPHA", "=BETA", StringComparison.Ordinal);

    private IEnumerable<FieldSession.Journal.Entry> Entries() =>
        JournalCheck.Of(_prompt.Study).LinesToFirstFailing.Select(EntryKinds.EntryIn);

    private bool IsBeta(SpecCode code) => _specs[code] == "BETA";

    private void Learn(string key)
    {
        foreach ((SpecCode code, string spec) in _prompt.SpecsIn(key))
        {
            _specs.Add(code, spec);
        }
    }
}
