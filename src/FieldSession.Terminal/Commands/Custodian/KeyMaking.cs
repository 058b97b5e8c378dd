using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Terminal.Commands;

/// <summary>Makes the key of a fitting from what the custodian gives: a list of specs or the earlier key, and passphrases.</summary>
/// <param name="words">What was typed behind 'seal'.</param>
/// <param name="outside">The world outside.</param>
internal sealed class KeyMaking(SealWords words, Surroundings outside)
{
    /// <summary>The key of the fitting before this one; null: none was given.</summary>
    public KeySheet? Earlier { get; private set; }

    /// <summary>The passphrase of the new key file; empty before the key is drawn.</summary>
    public string Passphrase { get; private set; } = "";

    /// <summary>Opens the key of the fitting before this one, where it was given.</summary>
    /// <returns>An exit code; where it is not 0, what is wrong has been said.</returns>
    public int OpenEarlier(string studyName)
    {
        if (words.After is not { } path)
        {
            return ExitCode.Done;
        }

        KeyFile file = outside.KeyFile;
        KeyOpening opening = KeyPhrases.Open(path, phrase => file.Open(path, phrase), outside);
        if (opening.Key is not { } key)
        {
            return Said($"{path}: {opening.Words}", KeyPhrases.CodeOf(opening.Fault));
        }

        Earlier = key;
        return key.StudyName == studyName ? ExitCode.Done : Said($"{path}: {CustodianWords.EarlierKeyIsOfAnotherStudy}", ExitCode.No);
    }

    /// <summary>Draws the key by lot.</summary>
    /// <param name="plan">The study's plan.</param>
    /// <param name="day">What the key is to know of its day.</param>
    /// <param name="drawn">The key; null where the code is not 0.</param>
    /// <returns>An exit code; where it is not 0, what is wrong has been said.</returns>
    public int Draw(Plan plan, FittingPlan day, out KeySheet? drawn)
    {
        drawn = null;
        if (Specs(plan.SpecCount) is not { } specs)
        {
            return ExitCode.Wrong;
        }

        bool hasMarks = Earlier?.HasDrawnMarks == true;
        if (words.DrawMarks && Earlier is null && day.Number > 1)
        {
            return Said(CustodianWords.MarksNeedEarlierKey, ExitCode.Wrong);
        }

        if (NewPassphrase.Asked(words.IsOfTwo, outside) is not { } passphrase)
        {
            return Said(CustodianWords.PassphrasesDiffer, ExitCode.Wrong);
        }

        Passphrase = passphrase;
        ImmutableDictionary<string, string>? marks =
            hasMarks ? Earlier!.Places.ToImmutableDictionary(line => line.Spec, line => line.Mark!)
            : words.DrawMarks ? MarkLot.Draw(specs.Names, outside.Lot)
            : null;
        drawn = KeySheet.Drawn(plan.StudyName, specs, day.EarlierCodes, outside.Lot, marks, day);
        return ExitCode.Done;
    }

    private SpecList? Specs(int wanted)
    {
        SpecList? fromKey = Earlier is null ? null : SpecList.Of(Earlier);
        return words.Specs is { } path ? Listed(path, wanted, fromKey) : fromKey;
    }

    private SpecList? Listed(string path, int wanted, SpecList? fromKey)
    {
        if (!File.Exists(path))
        {
            _ = Said(CommandWords.NoSpecList(path), ExitCode.Wrong);
            return null;
        }

        if (SpecList.Parse(SmallText.Read(path), wanted, out Objection? refusal) is not { } specs)
        {
            _ = Said($"{path}: {refusal}", ExitCode.Wrong);
            return null;
        }

        if (fromKey is null || (fromKey.Control == specs.Control && fromKey.Names.ToHashSet().SetEquals(specs.Names)))
        {
            return specs;
        }

        _ = Said($"{path}: {CustodianWords.ListIsNotThatOfEarlierKey}", ExitCode.Wrong);
        return null;
    }

    private int Said(string what, int code)
    {
        outside.Error.WriteLine(what);
        return code;
    }
}

/// <summary>Asks for the passphrase of a new key file, offers words by lot, and says how strong it is.</summary>
internal static class NewPassphrase
{
    private const int Tries = 3;

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
        for (int left = Tries; left > 0; left--)
        {
            string typed = outside.AskSecret(question) ?? "";
            bool isOffered = typed.Length == 0;
            string passphrase = isOffered ? offer.ToString() : typed;
            if (outside.AskSecret(isOffered ? CustodianWords.AskForOfferedWords : CustodianWords.AskAgain) == passphrase)
            {
                double bits = passphrase == offer.ToString() ? offer.Bits : PassphraseStrength.Bits(passphrase);
                outside.Error.WriteLine(CustodianWords.Strength(bits));
                return passphrase;
            }

            // the words on the paper stay the same
            outside.Error.WriteLine(left > 1 ? CustodianWords.TypeThemOnceMore : "");
        }

        return null;
    }
}
