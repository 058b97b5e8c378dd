using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Tests.Sealing;

public class CodesAreDrawnByLot
{
    [Fact]
    public void Any_two_codes_of_a_study_differ_in_two_digits_in_hundreds_of_draws()
    {
        for (int seed = 0; seed < 400; seed++)
        {
            IReadOnlyList<SpecCode> codes = CodeLot.Draw(9, [], new SeededLot(seed));
            Assert.Equal(9, codes.Distinct().Count());
            Assert.All(codes, code => Assert.True(CodeLot.IsNeutral(code), code.Digits));
            Assert.All(codes, code => Assert.InRange(int.Parse(code.Digits), 100, 999));
            Assert.All(
                codes,
                one => Assert.All(codes, other => Assert.True(one == other || DigitsApart(one, other) >= 2, $"{one} {other}"))
            );
        }
    }

    [Fact]
    public void A_second_fitting_takes_no_code_like_one_of_the_first()
    {
        for (int seed = 0; seed < 300; seed++)
        {
            SeededLot lot = new(seed);
            IReadOnlyList<SpecCode> first = CodeLot.Draw(9, [], lot);
            IReadOnlyList<SpecCode> second = CodeLot.Draw(9, first, lot);
            Assert.All(second, one => Assert.All(first, other => Assert.True(DigitsApart(one, other) >= 2, $"{one} {other}")));
        }
    }

    [Theory]
    [InlineData("000")]
    [InlineData("111")]
    [InlineData("666")]
    [InlineData("999")]
    [InlineData("123")]
    [InlineData("234")]
    [InlineData("789")]
    [InlineData("321")]
    [InlineData("210")]
    [InlineData("007")]
    [InlineData("100")]
    [InlineData("101")]
    [InlineData("500")]
    public void A_number_that_says_something_of_its_own_is_no_code(string digits) => Assert.False(CodeLot.IsNeutral(new SpecCode(digits)));

    [Theory]
    [InlineData("417")]
    [InlineData("862")]
    [InlineData("135")]
    [InlineData("112")]
    [InlineData("246")]
    public void A_number_that_says_nothing_is_a_code(string digits) => Assert.True(CodeLot.IsNeutral(new SpecCode(digits)));

    [Fact]
    public void Every_neutral_code_is_drawn_about_as_often_as_any_other()
    {
        const int Draws = 20_000;
        Dictionary<SpecCode, int> times = [];
        SeededLot lot = new(7);
        for (int draw = 0; draw < Draws; draw++)
        {
            SpecCode code = CodeLot.Draw(1, [], lot)[0];
            times[code] = times.GetValueOrDefault(code) + 1;
        }

        int neutral = Enumerable.Range(100, 900).Count(number => CodeLot.IsNeutral(new SpecCode($"{number}")));
        double wanted = (double)Draws / neutral;
        Assert.Equal(neutral, times.Count);
        Assert.InRange(times.Values.Min(), wanted / 4, wanted);
        Assert.InRange(times.Values.Max(), wanted, wanted * 2.5);
    }

    [Fact]
    public void When_no_code_is_left_the_draw_says_so()
    {
        List<SpecCode> used = [.. Enumerable.Range(0, 100).Select(n => new SpecCode($"{n / 10}{n % 10}{((n / 10) + (n % 10)) % 10}"))];
        Assert.Throws<InvalidOperationException>(() => CodeLot.Draw(2, used, new SeededLot(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CodeLot.Draw(0, [], new SeededLot(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CodeLot.Draw(10, [], new SeededLot(1)));
    }

    [Fact]
    public void Which_spec_takes_the_reference_place_and_the_lower_code_is_open()
    {
        SpecList specs = SpecList.Parse("PLAIN\nRIBBED\nTALL", 3, out _)!;
        List<KeySheet> keys = [.. Enumerable.Range(0, 900).Select(seed => KeySheet.Drawn("XX-1", specs, [], new SeededLot(seed)))];
        Assert.All(
            specs.Names,
            name =>
            {
                Assert.InRange(keys.Count(key => key.Places[0].Spec == name), 240, 360);
                Assert.InRange(keys.Count(key => key.Places.MinBy(place => place.Code.Digits)!.Spec == name), 240, 360);
            }
        );
        Assert.InRange(keys.Count(key => key.Places[0].Code == key.Codes.MinBy(code => code.Digits)), 240, 360);
        Assert.All(keys, key => Assert.Equal("PLAIN", key.ControlSpec));
        Assert.Equal(900, keys.Select(key => key.Nonce).Distinct().Count());
    }

    private static int DigitsApart(SpecCode one, SpecCode other) =>
        Enumerable.Range(0, 3).Count(place => one.Digits[place] != other.Digits[place]);
}
