using System.Globalization;
using FieldSession.Rating;
using FieldSession.State;

namespace FieldSession.Terminal.Commands;

/// <summary>What the command 'play' says: never a code at a place, never a run.</summary>
internal static class PlayWords
{
    public const string NoSetFromRecordings = "no trials from recordings are planned";
    public const string PlanOne = "type 'trials 862 417 n=20 seg=3 from=recordings which is louder' in 'fieldsession enter'";
    public const string PlanAnother = "plan another set before the reveal; it is counted apart";
    public const string TooFewFound = "too few recordings are left to play; name the files or their folder again";
    public const string CantBeRead = "a file or folder can't be read; name the recordings or their folder again";
    public const string SetVolume = "v plays one clip by lot, to set the volume; then leave it alone";
    public const string EnterPlays = "Enter plays the trial (v volume, q stop) > ";
    public const string AtItsEnd = "the set is complete; 'fieldsession review' shows what was chosen";

    public static string SetIsAtItsEnd(ChoiceSet set) => $"all {set.Presentations.Count} trials of set {set.Number} are made";

    public static string NotFound(IEnumerable<int> runs) => $"recordings not found: run {string.Join(", ", runs)}";

    public static string Head(ChoiceSet set, ClipPool pool) => string.Create(
        CultureInfo.CurrentCulture,
        $"set {set.Number}, '{set.Terms.Question}', {set.Presentations.Count} trials; clips of {pool.Segments.Min(segment => segment.All.First().Seconds):0.0} s");

    public static string Trial(ChoiceSet set, string person) => $"trial {set.NextTrial} of {set.Presentations.Count}, {person} alone";

    public static string WhichOne(ChoiceTerms terms) => terms.Kind == ChoiceKind.Triangle
        ? "which is the odd one: 1, 2 or 3 (r again, q stop) > "
        : $"{terms.Question}: 1 or 2 (r again, q stop) > ";

    public static string OpenAtTheReveal(ChoiceSet set) =>
        $"look out: set {set.Number} is not heard to its end; once the key is open it never can be; stop here and run 'fieldsession play'";

    public static string Stopped(ChoiceSet set) => $"stopped before trial {set.NextTrial}; the same command goes on";

    public static string PlayerFailed(int? exitCode) => exitCode is { } code
        ? $"the player ended with {code}, nothing is stored; give another --player"
        : "the player can't be started; give another --player";

    public static string PlayerWasQuick(double took, double seconds) => string.Create(
        CultureInfo.CurrentCulture, $"! the player ended after {took:0.0} s of {seconds:0.0} s; give one that plays to the end");
}
