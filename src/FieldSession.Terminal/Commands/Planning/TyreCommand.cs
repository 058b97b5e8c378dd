using System.CommandLine;
using System.Globalization;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.State;
using FieldSession.Store.Planning;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'tyre': what a size says, and what a speed error costs on the segments of a plan.</summary>
internal static class TyreCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> size = new("SIZE") { Description = "as on the sidewall, such as 225/45R18" };
        Option<string?> folder = new("--plan") { Description = "plan folder whose segments are shown too", HelpName = "PLAN_DIR" };
        Command command = new("tyre", "turns, cavity mode and cost of a speed error for a size of tyre") { size, folder };
        command.SetAction(typed => Run(typed.GetRequiredValue(size), typed.GetValue(folder), outside));
        return command;
    }

    /// <summary>Prints what follows from the size.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string text, string? folder, Surroundings outside)
    {
        if (TyreSize.Parse(text, out Objection? objection) is not { } size)
        {
            outside.Error.WriteLine(objection);
            return ExitCode.Wrong;
        }

        return folder is null ? PrintSize(size, UnitSystem.Metric, outside) : PrintWithSegments(size, folder, outside);
    }

    private static int PrintSize(TyreSize size, UnitSystem units, Surroundings outside)
    {
        foreach (string line in Words(size, units))
        {
            outside.Output.WriteLine(line);
        }

        return ExitCode.Done;
    }

    private static IEnumerable<string> Words(TyreSize size, UnitSystem units)
    {
        string Figure(double number, string form) => number.ToString(form, CultureInfo.InvariantCulture);
        yield return $"{size}: diameter {Figure(size.DiameterMillimetres, "0.0")} mm, circumference "
            + $"{Figure(size.CircumferenceMillimetres, "0.0")} mm";
        yield return $"turns: {Figure(size.TurnsPerKm, "0.0")} per km, {Figure(size.TurnsPerMile, "0")} per mile by the circumference;";
        yield return $"       loaded about {Figure(1e6 / size.RollingCircumferenceMillimetres, "0")} per km, "
            + $"{Figure(1e6 * Speed.KmPerMile / size.RollingCircumferenceMillimetres, "0")} per mile (3.05 diameters, from memory)";
        foreach (double celsius in new[] { 0.0, 20, 45 })
        {
            Temperature air = new(celsius);
            yield return $"first cavity mode with the air in the tyre at {air.In(units)}: {Figure(size.CavityHz(air), "0.0")} Hz";
        }
    }

    private static int PrintWithSegments(TyreSize size, string folder, Surroundings outside)
    {
        PlanReading reading = PlanFolder.Read(folder);
        foreach (PlanProblem problem in reading.Problems)
        {
            outside.Error.WriteLine(problem);
        }

        if (reading.Plan is not { } plan)
        {
            return ExitCode.Wrong;
        }

        PrintSize(size, plan.Units, outside);
        bool isImperial = plan.Units == UnitSystem.Imperial;
        outside.Output.WriteLine($"one {(isImperial ? "mph" : "km/h")} too fast costs (30 to 40 lg v), and turns of the wheel:");
        foreach (Segment segment in plan.Route)
        {
            double step = isImperial ? Speed.KmPerMile : 1;
            string cost = string.Create(
                CultureInfo.InvariantCulture,
                $"{SpeedCost.Db(segment.Speed, step, SpeedCost.LeastFactor):0.00} to "
                    + $"{SpeedCost.Db(segment.Speed, step, SpeedCost.MostFactor):0.00} dB, "
                    + $"{size.TurnsPerSecond(segment.Speed):0.0} a second"
            );
            outside.Output.WriteLine($"  {segment.Number, 3} {segment.Name} at {segment.Speed.In(plan.Units)}: {cost}");
        }

        return ExitCode.Done;
    }
}
