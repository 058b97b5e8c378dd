using System.Globalization;
using FieldSession.State;

namespace FieldSession.Terminal.Starting;

/// <summary>What the start screen says.</summary>
internal static class StartingWords
{
    public const string ProgramInOneSentence = "  blind comparison of tyre specs on the road";
    public const string NoStudyOpenedYet = "no study was opened here yet";
    public const string OrType = "type one of these, then Enter";
    public const string WhatDemoIs = "a day to try everything on";
    public const string WhatPlanningIs = "plan a day: route, order, crew, limits";
    public const string WhatPlanFolderGives = "a new study from the plan in that folder";
    public const string WhatStudyFileIs = "go on with a study";
    public const string WhereToRead = "Never done a blind comparison? 'fieldsession help why-blind' says why in two pages.";
    public const string RulesOfUse =
        "The driver never reads or types; the screen does not face the driver. Everything is stored as it is typed: leaving loses nothing.";
    public const string WhatToType = "type 'demo', 'plan FOLDER' or a path, then Enter";
    public const string NothingThere = "type 'demo', 'plan FOLDER', the path of a study, or of a folder with a plan";
    public const string CantBeRead = "can't be read now; opening it says why";

    public static string CopyOf(int number) => $"; same study as {number}";

    public static string ToldApart(DateTimeOffset begun, StudyIdentity study) =>
        string.Create(CultureInfo.InvariantCulture, $"; begun {begun:yyyy-MM-dd}, {study.ShortHash}");

    public static string FaultInProgram(Exception fault) => $"fault in the program: {fault.Message}";
}
