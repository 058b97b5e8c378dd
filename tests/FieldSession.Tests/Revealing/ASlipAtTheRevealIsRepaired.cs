using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Revealing;

/// <summary>
/// One wrong line in the evening costs nothing: marks are compared before anything is stored, and can be read again afterwards.
/// </summary>
public sealed class ASlipAtTheRevealIsRepaired : IDisposable
{
    private readonly AtThePrompt _prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(6);
    private readonly string[] _right;
    private readonly string[] _mistyped;
    private readonly SpecCode _beta;

    public ASlipAtTheRevealIsRepaired()
    {
        _prompt.Predict(_prompt.Now().Codes.First());
        _right = _prompt.RevealWords("a.key");
        _beta = _prompt.SpecsIn("a.key").Single(line => line.Value == "BETA").Key;
        _mistyped = [.. _right.Select(word => word == $"{_beta}=BETA" ? $"{_beta}=BETTA" : word)];
    }

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void A_mistyped_mark_stores_nothing_says_which_it_is_and_the_right_one_opens_the_key()
    {
        int lines = Lines();
        string said = _prompt.Must(1, _mistyped);
        Assert.Contains($"the mark read on {_beta} is NOT the one in the key", said);
        Assert.Contains("nothing is stored", said);
        Assert.DoesNotContain("BETA", said);
        Assert.Equal(lines, Lines());
        Assert.Contains("BETA", _prompt.Must(0, _right));
    }

    [Fact]
    public void One_reader_twice_stores_nothing_and_says_so()
    {
        Assert.Contains("not read by two different people", _prompt.Must(1, [.. _right[..^1], "ro "]));
        Assert.Null(_prompt.Now().Opening);
    }

    [Fact]
    public void Asked_for_marks_only_those_that_differ_are_asked_for_again_and_both_readings_are_kept()
    {
        SpecCode[] codes = [.. _prompt.Now().DrivenCodes];
        string[] marks = [.. codes.Select(code => code == _beta ? "BETTA" : "ALPHA")];
        string said = _prompt.Must(
            0,
            ["reveal", _prompt.Study, "--key", _prompt.Here("a.key")],
            $"{string.Join('\n', marks)}\nRo\nIlse\nbeta\n"
        );
        Assert.Equal(3, said.Split("mark under the tape").Length - 1);
        Assert.True(_prompt.Now().Opening!.MarksAgree);
        Assert.Contains($"First read on the tyres of {_beta}: BETTA; read again as beta.", Report());
        Assert.Contains("entries, commitment and freeze hold", _prompt.Must(0, ["verify", _prompt.Study]));
    }

    [Fact]
    public void Stored_as_it_was_read_it_withholds_the_names_and_a_later_reading_brings_them_back()
    {
        Assert.Contains(
            $"the report gives codes and no names: the mark read on {_beta} is NOT the one in the key",
            _prompt.Must(1, [.. _mistyped, "--as-read"])
        );
        Assert.Contains($"withheld here: the mark read on {_beta} is NOT the one in the key.", Report());
        Assert.DoesNotContain("BETA (", Report());

        Assert.Contains("NOT the one", _prompt.Must(1, Again("BETTER")));
        Assert.False(_prompt.Now().Opening!.MarksAgree);
        Assert.Contains("both readings are kept", _prompt.Must(0, Again("BETA")));
        Assert.True(_prompt.Now().Opening!.MarksAgree);
        string report = Report();
        Assert.Contains("The marks were read again after the reveal", report);
        Assert.Contains($"First read on the tyres of {_beta}: BETTA; read again as BETA.", report);
        Assert.DoesNotContain("are withheld", report);
        _prompt.Must(0, ["export", _prompt.Study, "--out", _prompt.Here("tables")]);
        Assert.Contains(
            File.ReadLines(_prompt.Here("tables/key.csv")),
            row => row.StartsWith($"{_beta},BETA", StringComparison.Ordinal) && row.Contains("BETTA", StringComparison.Ordinal)
        );
        Assert.Contains("entries, commitment and freeze hold", _prompt.Must(0, ["verify", _prompt.Study]));
    }

    [Fact]
    public void Marks_are_read_again_only_once_the_key_is_open_and_by_two_people_for_every_code()
    {
        Assert.Contains("the key is not open yet", _prompt.Must(1, Again("BETA")));
        _prompt.Must(1, [.. _mistyped, "--as-read"]);
        Assert.Contains(
            "not read by two",
            _prompt.Must(1, ["reveal", _prompt.Study, "--again", "--mark", $"{_beta}=BETA", "--reader", "Ro"])
        );
        Assert.Contains("the key is open already", _prompt.Must(1, _right));
    }

    [Fact]
    public void A_line_that_claims_marks_to_agree_which_do_not_is_found_by_verify()
    {
        _prompt.Must(1, [.. _mistyped, "--as-read"]);
        IReadOnlyList<Line> lines = JournalCheck.Of(_prompt.Study).LinesToFirstFailing;
        FieldSession.Revealing.MarksReadAgain claim = new(
            [.. _prompt.Now().DrivenCodes.Select(code => new FieldSession.Revealing.MarkRead(code, "NOTHING"))],
            ["Ro", "Ilse"],
            []
        );
        Line forged = EntryKinds.Of(claim).Write(claim, lines.Count + 1, lines[^1].Hash, lines[^1].At, lines[^1].Strand);
        RuleBroken broken = Assert.Single(JournalRules.BrokenIn([.. lines, forged]));
        Assert.Contains("not as the line says", broken.Why);
    }

    private string[] Again(string beta) =>
        [
            "reveal",
            _prompt.Study,
            "--again",
            "--reader",
            "Ro",
            "--reader",
            "Ilse",
            .. _prompt.Now().DrivenCodes.SelectMany(code => new[] { "--mark", $"{code}={(code == _beta ? beta : "ALPHA")}" }),
        ];

    private int Lines() => JournalCheck.Of(_prompt.Study).LinesToFirstFailing.Count;

    private string Report()
    {
        _prompt.Must(0, ["report", _prompt.Study, "--out", _prompt.Here("report")]);
        return File.ReadAllText(_prompt.Here("report/report.md"));
    }
}
