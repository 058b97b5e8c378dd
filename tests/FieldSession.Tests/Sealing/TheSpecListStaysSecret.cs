using FieldSession.Journal;
using FieldSession.Sealing;

namespace FieldSession.Tests.Sealing;

public class TheSpecListStaysSecret
{
    [Fact]
    public void One_name_a_line_is_read_and_the_first_is_the_control()
    {
        SpecList list = SpecList.Parse("\uFEFFSTANDARD\r\n\r\n  Stiffened, harder base \r\n", 2, out Objection? no)!;
        Assert.Null(no);
        Assert.Equal(["STANDARD", "Stiffened, harder base"], list.Names);
        Assert.Equal("STANDARD", list.Control);
        Assert.Equal("2 specs", $"{list}");
    }

    [Theory]
    [InlineData("SECRETA\nSECRET|B", 2, "line 2", "'|'")]
    [InlineData("SECRET=A\nSECRETB", 2, "line 1", "'='")]
    [InlineData("SECRETA\n\nSECRET\tB", 2, "line 3", "invisible")]
    [InlineData("SECRETA\nSECRET\u200BB", 2, "line 2", "invisible")]
    [InlineData("SECRETA\nSECRET\u2028B", 2, "line 2", "invisible")]
    [InlineData("SECRETA\nSECRET\uFFFDB", 2, "line 2", "broken")]
    [InlineData("SECRETA\nSECRETB\nsecreta", 3, "lines 1 and 3", "same")]
    [InlineData("SECRETA\nSECRETB", 3, "2 spec names", "3")]
    [InlineData("SECRETA", 1, "1 spec names", "2 to 9")]
    [InlineData("", 2, "0 spec names", "2")]
    [InlineData("SECRETA\nSECRETSECRETSECRETSECRETSECRETSECRETSECRETSECRETSECRETSECRETX", 2, "line 2", "too long")]
    public void A_wrong_list_is_refused_by_line_without_its_names(string text, int wanted, string where, string what)
    {
        Assert.Null(SpecList.Parse(text, wanted, out Objection? no));
        Assert.Contains(where, $"{no}");
        Assert.Contains(what, $"{no}");
        Assert.DoesNotContain("secret", $"{no}", StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_name_may_have_sixty_characters_in_any_script() =>
        Assert.NotNull(SpecList.Parse($"{new string('Å', 60)}\n{string.Concat(Enumerable.Repeat("🛞", 60))}", 2, out _));
}
