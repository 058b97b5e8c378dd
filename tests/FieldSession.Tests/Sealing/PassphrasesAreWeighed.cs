using FieldSession.Sealing;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Tests.Sealing;

public sealed class PassphrasesAreWeighed
{
    [Theory]
    [InlineData("12345678")]
    [InlineData("aaaaaaaa")]
    [InlineData("abcdefgh")]
    [InlineData("87654321")]
    [InlineData("password")]
    [InlineData("summer summer summer")]
    public void What_everybody_tries_first_is_called_weak(string passphrase) =>
        Assert.InRange(PassphraseStrength.Bits(passphrase), 0, PassphraseStrength.WeakBits);

    [Theory]
    [InlineData("anvil cedar mural stoop")]
    [InlineData("7f3k-92mq-11xz")]
    public void Four_words_or_a_long_mixture_are_not(string passphrase) =>
        Assert.InRange(PassphraseStrength.Bits(passphrase), PassphraseStrength.WeakBits + 10, 200);

    // 6^5 words, as five dice name them: 12.9 bits a word (the list's own page says so; docs/licences.md).
    [Fact]
    public void Four_words_are_drawn_from_a_list_of_7776_different_ones()
    {
        string[] list = OfferedWords.List();
        Assert.Equal(7776, list.Distinct(StringComparer.Ordinal).Count());
        OfferedWords offer = OfferedWords.Drawn(new SeededLot(2));
        Assert.All(offer.Words, word => Assert.Contains(word, list));
        Assert.Equal(4, offer.ToString().Split(' ').Length);
        Assert.Equal(51.7, offer.Bits, 0.05);
        Assert.NotEqual(offer.ToString(), OfferedWords.Drawn(new SeededLot(3)).ToString());
    }
}
