using FieldSession.Sealing;
using FieldSession.Store.Sealing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Sealing;

/// <summary>A key file that the first form's program wrote is kept; it opens for ever, and does what it can.</summary>
public sealed class AKeyFileOfTheFirstForm
{
    private static string Kept => Path.Combine(Repository.Root, "tests/FieldSession.Tests/Sealing/key-v1.json");

    [Fact]
    public void It_opens_gives_its_commitment_and_its_names_are_its_marks()
    {
        KeyOpening opening = new KeyFile(new SeededLot(1), Pbkdf2Stretch.Derive).Open(Kept, AtThePrompt.Passphrase);
        Assert.Equal("study=T-7|389=ALPHA|604=BETA|nonce=" + opening.Key!.Nonce, Commitment.CanonicalLine(opening.Key));
        Assert.Equal("10ef5a58c1ec224146147ad0712b50d278053d52d9678c5dcfc893632af90e55", Commitment.Of(opening.Key));
        Assert.Equal(["ALPHA", "BETA"], opening.Key.Places.Select(line => line.UnderTape).Order());
        Assert.Null(opening.Key.Plan);
        Assert.Equal(1, KeyFile.LabelOf(Kept, out _)!.People);
    }

    [Fact]
    public void Its_list_has_the_sets_and_says_that_it_knows_no_order()
    {
        using AtThePrompt prompt = new() { Stretch = Pbkdf2Stretch.Derive };
        Assert.Contains("knows codes and specs, not the order", prompt.Must(0, ["fitting", Kept, "--print"]).ReplaceLineEndings(" "));
        string[] table = prompt.Must(0, ["fitting", Kept, "--csv"]).Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["fitting,place,code,spec,mark", ",R,389,ALPHA,ALPHA", ",1,604,BETA,BETA"], table);
    }
}
