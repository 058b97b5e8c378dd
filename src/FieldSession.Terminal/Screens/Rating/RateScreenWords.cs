using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Rating;

/// <summary>What the rate screen says.</summary>
internal static class RateScreenWords
{
    public const string OnePersonAloneAtKeyboard = "one person alone at the keyboard: who rates? number or name, then Enter";
    public const string NothingHasBeenDriven = "nothing has been driven";
    public const string DataAreFrozen = "the data are frozen";

    public static string AgainstWhichStandsAt(RateSight sight) => $"   against {sight.Study.ReferenceCode}, which stands at {Score.Anchor}";

    public static string ShutUntilCarIsParked => $"shut until the car is parked: type '{Parking.Word}' and press Enter";

    public static string IsThroughEnterGivesKeyboardToNext(RateSight sight) => $"{sight.Rater!.Name} is through: Enter gives the keyboard to the next";

    public static string SetTypeChooseNameCodeOrFirst(ChoiceSet set, string inWords) => $"set {set.Number}, '{set.Terms.Question}': {inWords}; type 'choose NAME CODE', or first or second";

    public static string RunIsOnRatings(Run run) => $"run {run.Number} is on: ratings at a stop";

    public static string RatingsOfRunAreClosed(Run run) => $"the ratings of run {run.Number} are closed";

    public static string BracketsOthersAndStandsAtNothing(Run run) => $"{run.Code} brackets the others and stands at {Score.Anchor}: nothing is rated";

    public static string IsNotInCrew(string typed, string crew) => $"'{typed}' is not in the crew: {crew}";

    public static string NotSavedTypeItAgain(string because) => $"not saved: {because}; type it again";
}
