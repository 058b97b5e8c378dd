using System.Globalization;
using System.Text;
using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>
/// Which words may be in the key's canonical line. The line is cut at '|' and '=', so a word that holds one could make
/// two different keys give one commitment; and what the eye can't see, nobody can compare.
/// </summary>
public static class SealableText
{
    /// <summary>Most characters a word may have.</summary>
    public const int Longest = 60;

    /// <summary>What is allowed, in words for the custodian and the crew.</summary>
    public const string Allowed = SealingWords.SealableCharacters;

    /// <summary>What rules out a word, without repeating it; null: nothing.</summary>
    public static string? FaultIn(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        if (string.IsNullOrWhiteSpace(word))
        {
            return SealingWords.WordIsEmpty;
        }

        if (word.EnumerateRunes().Count() > Longest)
        {
            return SealingWords.WordIsTooLong;
        }

        return word.AsSpan().ContainsAny('|', '=') ? SealingWords.WordHoldsSeparator
            : IsVisible(word) ? null
            : SealingWords.WordHoldsUnseenCharacter;
    }

    /// <summary>Whether every character of a text can be seen: no control character, line break, or broken character.</summary>
    public static bool IsVisible(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return !text.EnumerateRunes().Any(IsUnseen);
    }

    private static bool IsUnseen(Rune rune) =>
        rune == Rune.ReplacementChar
        || Rune.GetUnicodeCategory(rune)
            is UnicodeCategory.Control
                or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
                or UnicodeCategory.PrivateUse
                or UnicodeCategory.OtherNotAssigned;
}

/// <summary>What sealing says: codes, specs, commitments.</summary>
internal static class SealingWords
{
    public const string NonceForm = "the nonce is 32 lower-case hex digits";
    public const string KeyHoldsTwoToNineCodes = "a key holds 2 to 9 codes";
    public const string CodeIsThreeDigits = "a code is three digits";
    public const string TwoCodesAreSame = "two codes are the same";
    public const string SpecNameCantBeSealed = "a spec name can't be sealed";
    public const string TwoSpecNamesAreSame = "two spec names are the same";
    public const string ControlIsNoneOfSpecs = "the control is none of the specs";
    public const string MarksAreNotAsDrawn = "each spec has a mark of its own, or none has one";
    public const string SealableCharacters = "1 to 60 visible characters without '|' and '='";
    public const string WordIsEmpty = "it is empty";
    public const string WordIsTooLong = "it is too long";
    public const string WordHoldsSeparator = "it holds '|' or '='";
    public const string WordHoldsUnseenCharacter = "it holds an invisible or broken character";
    public const string GiveEachSpecNameOfItsOwn = "give each spec a name of its own; capitals make no difference";
    public const string SealNewFittingAtNextStop = "seal the new fitting at the next stop";
    public const string SealedCodesAreNotDriven = "the study is sealed already, and none of its codes has been driven";
    public const string DriveSealedCodes = "its codes are valid; drive them, or start a new study";
    public const string DrivenWithoutSealedCodes = "runs have been driven without sealed codes";
    public const string StartNewStudyToDriveBlind = "start a new study to drive blind";
    public const string DrawOneCodeForEachSpec = "draw one code for each spec";
    public const string CodeIsLikeEarlierOne = "a code is too much like one of an earlier fitting";
    public const string DrawCodesUnlikeEarlierOnes = "draw codes that differ from all earlier ones in two digits";

    public static string StudyNameCantBeSealed(string fault) => $"the study's name can't be sealed: {fault}";

    public static string LineIsNoSpecName(int number, string fault) => $"line {number} is not a spec name: {fault}";

    public static string SpecNameForm => $"a spec name is {SealableText.Allowed}, one a line";

    public static string LinesHoldSameSpecName(int earlier, int later) => $"lines {earlier} and {later} hold the same spec name";

    public static string ListHasWrongCount(int count, int wanted) => $"the list holds {count} spec names, the plan says {wanted}";

    public static string SpecListForm(int fewest, int most) => $"write one spec name a line, {fewest} to {most} lines, the control first";

    public static string OrderGoesOnWith(SpecCode asked) => $"; the order goes on with {asked}";

    public static string FittingSealed(int fitting, string codes, SpecCode? asked) =>
        $"sealed: fitting {fitting} has the new codes {codes}{(asked is { } code ? OrderGoesOnWith(code) : "")}";

    public static string WrongNumberOfCodesDrawn(int codes, int specs) => $"{codes} codes were drawn, the plan has {specs} specs";
}
