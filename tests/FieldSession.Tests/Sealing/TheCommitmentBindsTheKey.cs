using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Tests.Sealing;

public class TheCommitmentBindsTheKey
{
    private const string Nonce = "8f1d6c0b2a4e49579d03c7e1b6a85f42";

    // the hash is what sha256sum says to the same line
    [Fact]
    public void The_known_line_gives_the_known_hash_in_whatever_order_the_places_stand()
    {
        KeySheet key = Key(("417", "STANDARD"), ("862", "STIFFENED"));
        KeySheet turned = Key(("862", "STIFFENED"), ("417", "STANDARD"));
        Assert.Equal("study=QW-0114|417=STANDARD|862=STIFFENED|nonce=8f1d6c0b2a4e49579d03c7e1b6a85f42", Commitment.CanonicalLine(key));
        Assert.Equal("051f0415afe4253ee9cc7236825befab0644b7a5baf1951789f98a80bd9c62c5", Commitment.Of(key));
        Assert.Equal(Commitment.Of(key), Commitment.Of(turned));
    }

    [Fact]
    public void Swapping_the_specs_gives_another_hash() =>
        Assert.NotEqual(
            Commitment.Of(Key(("417", "STANDARD"), ("862", "STIFFENED"))),
            Commitment.Of(Key(("417", "STIFFENED"), ("862", "STANDARD")))
        );

    [Fact]
    public void A_key_that_slips_into_a_message_tells_no_spec()
    {
        KeySheet key = Key(("417", "STANDARD"), ("862", "STIFFENED"));
        Assert.Equal("key of QW-0114", $"{key}");
        Assert.Equal("417", $"{key.Places[0]}");
        Assert.Equal("862", $"{Key(("417", "Z"), ("862", "STANDARD")).ControlCode}");
    }

    [Theory]
    [InlineData("Q|W", "417", "862", "STIFFENED", Nonce)]
    [InlineData("QW", "417", "417", "STIFFENED", Nonce)]
    [InlineData("QW", "417", "86", "STIFFENED", Nonce)]
    [InlineData("QW", "417", "862", "standard", Nonce)]
    [InlineData("QW", "417", "862", "STIFF=ENED", Nonce)]
    [InlineData("QW", "417", "862", "STIFFENED", "8F1D6C0B2A4E49579D03C7E1B6A85F42")]
    [InlineData("QW", "417", "862", "STIFFENED", "8f1d")]
    public void A_key_that_could_be_read_two_ways_is_refused_without_naming_a_spec(
        string study,
        string one,
        string other,
        string spec,
        string nonce
    )
    {
        ArgumentException no = Assert.Throws<ArgumentException>(() =>
            new KeySheet(study, [new KeyLine(new SpecCode(one), "STANDARD"), new KeyLine(new SpecCode(other), spec)], "STANDARD", nonce)
        );
        Assert.DoesNotContain("STAND", no.Message, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("STIFF", no.Message, StringComparison.OrdinalIgnoreCase);
    }

    private static KeySheet Key(params (string Code, string Spec)[] places) =>
        new("QW-0114", places.Select(place => new KeyLine(new SpecCode(place.Code), place.Spec)), "STANDARD", Nonce);
}
