using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Rating;

/// <summary>What the rate screen says.</summary>
internal static class RateScreenWords
{
    public const string WhoRates = "one person alone at the keyboard: who rates? number or name, then Enter";
    public const string HowToLeaveSlip = "the order, for whoever runs the trials alone: Enter or Esc covers it";
    public const string NothingDriven = "nothing has been driven";
    public const string DataFrozen = "the data are frozen";

    public static string AgainstReference(SpecCode? reference) => $"   against {reference}, which is {Score.Anchor}";

    public const string ShutUntilParked = $"shut until the car is parked: type '{Parking.Word}' and press Enter";

    public static string RaterIsThrough(string rater) => $"{rater} is done: Enter gives the keyboard to the next";

    public static string ChoiceSetOpen(ChoiceSet set, string trials) => set.IsFromRecordings ? $"set {set.Number}, '{set.Terms.Question}': {trials}" : $"set {set.Number}, '{set.Terms.Question}': {trials}; type 'choose NAME first' or second, 'slip NAME' for the order";

    public static string RunStillOn(Run run) => $"run {run.Number} is on: ratings at a stop";

    public static string RatingsClosed(Run run) => $"the ratings of run {run.Number} are closed";

    public static string ReferenceIsNotRated(Run run) => $"{run.Code} brackets the others and is {Score.Anchor}: nothing is rated";

    public static string NotInCrew(string typed, string crew) => $"'{typed}' is not in the crew: {crew}";
}
