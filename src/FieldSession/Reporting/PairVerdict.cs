using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What meter and ear say of a code against another, by the plan's main question.</summary>
/// <param name="Main">The comparison that the question is answered on; null: nothing can be compared there.</param>
/// <param name="Choice">The forced choices that carry the ear's word; null: none were planned for the pair.</param>
internal sealed record PairVerdict(ClassComparison? Main, ChoiceFinding? Choice)
{
    /// <summary>The meter's word.</summary>
    public MeterVerdict Meter => MeterWord.Of(Main);

    /// <summary>The ear's word.</summary>
    public EarVerdict Ear => Choice?.Verdict ?? EarVerdict.NotTestedEnough;

    /// <summary>What is said of a pair.</summary>
    public static PairVerdict Of(CodeComparison pair, Plan plan, Comparison comparison, EarFindings ear) =>
        new(VerdictSection.Main(comparison, pair, plan.MainMeasure), ear.MainChoice(pair.Code, pair.Reference));

    /// <summary>Whether it is known that the difference of a pair is candidate minus control.</summary>
    public static bool IsAgainstControl(CodeComparison pair, OpenedKey? key) =>
        key is { NamesAllowed: true } && key.IsControl(new SpecCode(pair.Reference)) == true;
}
