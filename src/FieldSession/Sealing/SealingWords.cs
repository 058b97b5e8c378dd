using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>What sealing says: codes, specs, commitments.</summary>
internal static class SealingWords
{
    public const string NonceIsHexDigits = "the nonce is 32 lower-case hex digits";
    public const string KeyHoldsToCodes = "a key holds 2 to 9 codes";
    public const string CodeIsThreeDigits = "a code is three digits";
    public const string TwoCodesAreSame = "two codes are the same";
    public const string SpecNameCantBeSealed = "a spec name can't be sealed";
    public const string TwoSpecNamesAreSame = "two spec names are the same";
    public const string ControlIsNoneOfSpecs = "the control is none of the specs";
    public const string ToVisibleCharactersWithoutAnd = "1 to 60 visible characters without '|' and '='";
    public const string ItIsEmpty = "it is empty";
    public const string ItIsTooLong = "it is too long";
    public const string ItHoldsOr = "it holds '|' or '='";
    public const string ItHoldsInvisibleOrBrokenCharacter = "it holds an invisible or broken character";
    public const string GiveEachSpecNameOfItsOwn = "give each spec a name of its own; capitals don't tell names apart";
    public const string SealNewFittingAtNextStop = "seal the new fitting at the next stop";
    public const string StudyIsSealedAlready = "the study is sealed already, and none of its codes has been driven";
    public const string ItsCodesStand = "its codes stand; drive them, or start a new study";
    public const string RunsHaveBeenDrivenWithoutSealedCodes = "runs have been driven without sealed codes";
    public const string StartNewStudyToDriveBlind = "start a new study to drive blind";
    public const string DrawOneCodeForEachSpec = "draw one code for each spec";
    public const string CodeIsLikeOneOfEarlierFitting = "a code is like one of an earlier fitting";
    public const string DrawCodesThatDifferFromAllEarlierOnes = "draw codes that differ from all earlier ones in two digits";

    public static string StudysNameCantBeSealed(string fault) => $"the study's name can't be sealed: {fault}";

    public static string LineIsNoSpecName(int number, string fault) => $"line {number} is no spec name: {fault}";

    public static string SpecNameIsOneLine => $"a spec name is {SealableText.Allowed}, one a line";

    public static string LinesAndHoldSameSpecName(int earlier, int number) => $"lines {earlier} and {number} hold the same spec name";

    public static string ListHoldsSpecNames(int count, int wanted) => $"the list holds {count} spec names, the plan says {wanted}";

    public static string WriteOneSpecNameLine(int fewest, int most) => $"write one spec name a line, {fewest} to {most} lines, the control first";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";

    public static string AndOrderGoesOnWith(SpecCode asked) => $"; the order goes on with {asked}";

    public static string SealedFittingHasNewCodes(Study after, string codes, string next) => $"sealed: fitting {after.Fittings.Count} has the new codes {codes}{next}";

    public static string CodesWereDrawn(int codes, int specs) => $"{codes} codes were drawn, the plan has {specs} specs";
}
