using FieldSession.Sealing;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Terminal.Commands;

/// <summary>Asks for the passphrase of a new key file, offers words by lot, and says how strong it is.</summary>
internal static class NewPassphrase
{
    /// <summary>The passphrase, of two people both as one; null: what was typed twice was not the same.</summary>
    public static string? Asked(bool isOfTwo, Surroundings outside)
    {
        if (One(CustodianWords.AskForPassphrase, outside.Passphrase, outside) is not { } first)
        {
            return null;
        }

        if (!isOfTwo)
        {
            return first;
        }

        WipeWordsOf(outside.Passphrase, CustodianWords.SecondPersonsTurn, outside);
        string? second = One(CustodianWords.AskForSecondPassphrase, outside.SecondPassphrase, outside);
        WipeWordsOf(outside.SecondPassphrase, CustodianWords.PassphrasesAreWiped, outside);
        return second is null ? null : TwoPassphrases.Joined(first, second);
    }

    // Words that were offered to one of two people are still on the screen, and the other one must not read them.
    private static void WipeWordsOf(string? given, string what, Surroundings outside)
    {
        if (given is null && outside.ReadKeyUnseen is not null)
        {
            outside.WipeScreen();
            outside.Error.WriteLine(what);
        }
    }

    private static string? One(string question, string? given, Surroundings outside)
    {
        if (given is null && outside.ReadKeyUnseen is not null)
        {
            return Typed(question, outside);
        }

        string passphrase = given ?? outside.AskSecret(question) ?? "";
        outside.Error.WriteLine(CustodianWords.Strength(PassphraseStrength.Bits(passphrase)));
        return passphrase;
    }

    // A slip in a passphrase that nobody sees while typing would lose the key: it is typed twice.
    private static string? Typed(string question, Surroundings outside)
    {
        OfferedWords offer = OfferedWords.Drawn(outside.Lot);
        outside.Error.WriteLine(CustodianWords.OfferWords(offer));
        string typed = outside.AskSecret(question) ?? "";
        bool isOffered = typed.Length == 0;
        string passphrase = isOffered ? offer.ToString() : typed;
        if (outside.AskSecret(isOffered ? CustodianWords.AskForOfferedWords : CustodianWords.AskAgain) != passphrase)
        {
            return null;
        }

        outside.Error.WriteLine(CustodianWords.Strength(passphrase == offer.ToString() ? offer.Bits : PassphraseStrength.Bits(passphrase)));
        return passphrase;
    }
}
