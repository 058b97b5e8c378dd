using FieldSession.Comparing;
using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Tests.Reporting;

/// <summary>A finished set of forced choices with a given word.</summary>
internal static class AChoice
{
    public static ChoiceFinding With(EarVerdict word)
    {
        double p = word == EarVerdict.HeardBlind ? 0.01 : 0.4;
        double power = word == EarVerdict.NotTestedEnough ? 0.5 : 0.9;
        ChoiceFinding choice = new(
            1,
            new ChoiceTerms(ChoiceKind.Paired, new SpecCode("862"), new SpecCode("417"), "which is louder", 1, null, 0.75),
            "Mill lane",
            40,
            40,
            false,
            new ChoiceSize(40, 0.5, 27, 0.75, power, power, 1),
            new ChoiceCounts(
                40,
                27,
                new SpecCode("862"),
                p,
                0.51,
                0.81,
                20,
                [new PersonCount("Ro", 14, 20), new PersonCount("Tam", 13, 20)]
            )
        );
        Assert.Equal(word, choice.Verdict);
        return choice;
    }
}
