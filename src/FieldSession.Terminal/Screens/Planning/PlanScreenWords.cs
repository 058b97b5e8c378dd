namespace FieldSession.Terminal.Screens.Planning;

/// <summary>What the plan screen says.</summary>
internal static class PlanScreenWords
{
    public const string Road = "road";
    public const string ChooseAnOrder = "order of runs: which one?";
    public const string NoSegmentYet = "  no segment yet: Ctrl+N adds one";
    public const string PlanIsFixed = " The plan of a study that has begun is fixed. 'fieldsession plan PLAN_DIR' edits a plan.";
    public const string NotWrittenYet = "the plan is not written: Ctrl+S writes it; the same key again leaves without";
    public const string NothingToFix = "nothing is left to fix";

    public static string HowToTakeAnOrder(string restsOn) => $"type a number to take that order, or '3 Ro, Tam' to share the wheel; Esc leaves. {restsOn}; shown in 4 of 5 such days";

    public static string WarningsToLookAt(int warnings) => $"{warnings} to look at";

    public static string OrdersNeedARoute => $"Fix the plan first ({PlanKeys.Look} goes to it), then choose an order.";

    public static string NoSuchOrder(int last) => $"there are orders 1 to {last}: type one of these numbers";

    public static string OrderTaken(int number, string order) => $"order {number} is in the plan: {order}; Ctrl+S writes it";
}
