using FieldSession.Aligning;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>What the screens may use. It comes from outside; screens know no files and no clock of their own.</summary>
internal sealed record Desk
{
    /// <summary>The study's one door.</summary>
    public required Logbook Logbook { get; init; }

    /// <summary>Where the time comes from.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>The look to begin with.</summary>
    public Palette Palette { get; init; } = Palette.Day;

    /// <summary>How the user last looked at the screens.</summary>
    public UsersSight Sight { get; init; } = new();

    /// <summary>Remembers how the user looks at them now.</summary>
    public Action<UsersSight> RememberSight { get; init; } = _ => { };

    /// <summary>Whether this user has covered the running comparison.</summary>
    public Cover Cover { get; init; } = new();

    /// <summary>The keys.</summary>
    public KeyTable Keys { get; init; } = KeyTable.Standard;

    /// <summary>How what is written large is written.</summary>
    public LetterForm Letters { get; init; }

    /// <summary>Whether the car is parked, as the crew has said.</summary>
    public Parking Parking { get; init; } = new();

    /// <summary>The plan folder that is being made; null: a study has begun, its plan is fixed.</summary>
    public IPlanTable? PlanTable { get; init; }

    /// <summary>
    /// Puts the key of the custodian's file at a path, opened with a passphrase, on a ring; it says nothing of the specs.
    /// </summary>
    public Func<string, string, KeyRing, KeyTried>? OpenKey { get; init; }

    /// <summary>What opens the key of a demo, told where a custodian would know it; null: no demo.</summary>
    public string? KeyOfDemo { get; init; }

    /// <summary>The passphrases of two people as the one that <see cref="OpenKey"/> takes.</summary>
    public Func<string, string, string> TwoPassphrases { get; init; } = (first, _) => first;

    /// <summary>Version of the program, which is in the report.</summary>
    public string Version { get; init; } = "0";

    /// <summary>Writes the report and gives its path.</summary>
    public Func<string>? WriteReport { get; init; }

    /// <summary>
    /// What went wrong beside the entry, such as a copy that could not be made, in words and only once; null: nothing new.
    /// </summary>
    public Func<string?> Trouble { get; init; } = () => null;

    /// <summary>A stream of levels from a program of the user's; null: there is none.</summary>
    public StreamedLevels? Levels { get; init; }

    /// <summary>How a day is compared.</summary>
    public Func<MeasuredDay, ComparisonTerms, Comparison> Compare { get; init; } = BlindComparison.Of;
}

/// <summary>The hand that writes into the logbook for every screen, and remembers whether the disk took it.</summary>
/// <param name="logbook">The study's one door.</param>
internal sealed class Pen(Logbook logbook)
{
    /// <summary>Why the last act that could have been stored was not; null: it is safe.</summary>
    public string? NotSavedBecause { get; private set; }

    /// <summary>Raised after each try, stored or not.</summary>
    public event EventHandler? Tried;

    /// <summary>Writes a typed line.</summary>
    public Outcome Write(string line) => Noted(logbook.Write(line));

    /// <summary>Writes a fact that was put together from several answers.</summary>
    public Outcome Write(Entry fact) => Noted(logbook.Write(fact));

    private Outcome Noted(Outcome outcome)
    {
        if (outcome.Objection is null)
        {
            NotSavedBecause = outcome.NotSavedBecause;
        }

        Tried?.Invoke(this, EventArgs.Empty);
        return outcome;
    }
}

/// <summary>Whether this user has covered the running comparison on this laptop. What the plan covers stays covered either way.</summary>
/// <param name="isOn">Whether it begins covered.</param>
internal sealed class Cover(bool isOn = false)
{
    /// <summary>Whether it is covered.</summary>
    public bool IsOn { get; private set; } = isOn;

    /// <summary>Covers it, or uncovers it.</summary>
    public void Turn() => IsOn = !IsOn;
}

/// <summary>
/// Whether the car is stopped and parked. The program can't know it: somebody says so by typing a word, once, and is asked
/// again after a run was started.
/// </summary>
internal sealed class Parking
{
    /// <summary>The word that says so.</summary>
    public const string Word = "parked";

    /// <summary>Whether it was said and no run was started since.</summary>
    public bool IsParked { get; private set; }

    /// <summary>Whether a typed line is the word.</summary>
    public static bool IsWord(string typed) => string.Equals(typed.Trim().Trim('\''), Word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Takes a typed line.</summary>
    /// <returns>Whether it was the word.</returns>
    public bool Take(string typed)
    {
        IsParked |= IsWord(typed);
        return IsParked;
    }

    /// <summary>A run has started.</summary>
    public void MoveOff() => IsParked = false;
}
