namespace FieldSession.Terminal.Screens.Planning;

/// <summary>What the plan screen says.</summary>
internal static class PlanScreenWords
{
    public const string OrderOfRuns = "order of runs: which one?";
    public const string NoSegmentYet = "  no segment yet: Ctrl+N adds one";
    public const string PlanOfStudyThatIsBegunStands = " The plan of a study that is begun stands. 'fieldsession plan PLAN_DIR' edits a plan.";
    public const string PlanIsNotWritten = "the plan is not written: Ctrl+S writes it; the same key again leaves without";
    public const string NothingIsToBeMended = "nothing is to be mended, nothing to be looked at";

    public static string NumberAndEnterPutsOneIntoPlan(string restsOn) => $"a number and Enter puts one into the plan, a number and names shares the wheel: 3 Ro, Tam; Esc leaves. {restsOn}; shown in 4 of 5 such days";

    public static string ToLookAt(int warnings) => $"{warnings} to look at";

    public static string OrdersAreReckonedForThisRoute => $"orders are reckoned for this route: mend what is wrong first, {PlanKeys.Look} goes to it";

    public static string ThereAreOrdersToType(OrdersSight orders) => $"there are orders 1 to {orders.Orders.Length - 1}: type one of these numbers";

    public static string OrderStandsInPlan(int taken, string order) => $"order {taken} stands in the plan: {order}; Ctrl+S writes it";
}
