using FieldSession.Store.Exports;

namespace FieldSession.Tests.Exports;

public sealed class VisibleTextTests
{
    // directional overrides and isolates: Unicode Standard Annex 9, chapter 2
    [Theory]
    [InlineData("plain \u00E9 \u05D0 \U0001F697", "plain \u00E9 \u05D0 \U0001F697")]
    [InlineData("two\nlines\tand a tab\u2028", "two lines and a tab ")]
    [InlineData("a\u0000b\u001B[31m", "a[U+0000]b[U+001B][31m")]
    [InlineData("\u202Egnirts\u202C", "[U+202E]gnirts[U+202C]")]
    [InlineData("\u2066x\u2069", "[U+2066]x[U+2069]")]
    [InlineData("\uFFFE", "[U+FFFE]")]
    public void What_can_not_be_seen_and_changes_what_is_seen_becomes_a_mark(string words, string visible) =>
        Assert.Equal(visible, VisibleText.Of(words));

    [Fact]
    public void Half_a_pair_becomes_the_sign_for_what_could_not_be_read() =>
        Assert.Equal("half \uFFFD", VisibleText.Of("half " + (char)0xD83D));

    [Theory]
    [InlineData("Mill lane", 9, "Mill lane")]
    [InlineData("Mill lane", 6, "Mill\u2026")]
    [InlineData("ae\u0301iou", 3, "ae\u0301\u2026")]
    [InlineData("\U0001F697\U0001F697\U0001F697", 2, "\U0001F697\u2026")]
    public void A_name_is_cut_between_letters_and_not_inside_one(string name, int letters, string shown) =>
        Assert.Equal(shown, ShortText.Of(name, letters));
}
