using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal.Demonstration;

/// <summary>The day of a demo study: planned, sealed with the codes of its day, and driven by the lines that its co-driver typed.</summary>
internal static class DemoDay
{
    /// <summary>Writes the plan into an empty logbook and seals it.</summary>
    /// <returns>An exit code.</returns>
    public static int Lay(DemoStudy demo, Logbook logbook, string keyPath, Surroundings outside)
    {
        PlanReading reading = PlanFolder.Parse(demo.Text("plan.toml"), demo.Text("route.csv"), demo.Name);
        Plan plan = reading.Plan ?? throw new InvalidDataException(DemoWords.PlanIsWrong(string.Join("; ", reading.Problems)));
        int planned = Answer.To(logbook.Write(new PlanMade(plan)), outside);
        SpecList specs = Specs(demo);
        KeySheet key = new(
            plan.StudyName,
            demo.Codes.Zip(specs.Names, (code, spec) => new KeyLine(new SpecCode(code), spec)),
            specs.Control,
            Convert.ToHexStringLower(outside.Lot.Bytes(KeySheet.NonceBytes)),
            new FittingPlan(1, PlanDigest.Of(plan), plan.Order, plan.CarOrder));
        return Math.Max(planned, SealCommand.Seal(logbook, key, keyPath, demo.Passphrase, outside));
    }

    /// <summary>What is read on the tyres at the reveal, CODE=NAME.</summary>
    public static string[] Marks(DemoStudy demo) => [.. demo.Codes.Zip(Specs(demo).Names, (code, spec) => $"{code}={spec}")];

    /// <summary>Types the day's lines, at the times the day says; every line must be taken.</summary>
    /// <param name="logbook">The sealed study.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="clock">The clock that follows the day.</param>
    /// <param name="runs">After how many runs to stop.</param>
    /// <exception cref="IOException">The disk does not take a line.</exception>
    public static void Type(Logbook logbook, IEnumerable<string> lines, DemoClock clock, int runs)
    {
        foreach (string line in lines)
        {
            clock.Follow(line);
            if (EntryText.IsPassedOver(line))
            {
                continue;
            }

            if (line.StartsWith("run ", StringComparison.Ordinal) && logbook.Study.Runs.Count >= runs)
            {
                return;
            }

            clock.Advance(TimeSpan.FromMinutes(1));
            Outcome outcome = logbook.Write(line);
            if (!outcome.IsWritten)
            {
                string words = DemoWords.LineNotTaken(line, outcome);
                throw outcome.NotSavedBecause is null ? new InvalidDataException(words) : new IOException(words);
            }
        }
    }

    private static SpecList Specs(DemoStudy demo) => SpecList.Parse(demo.Text("specs.txt"), demo.Codes.Length, out Objection? refusal)
        ?? throw new InvalidDataException(DemoWords.SpecListIsWrong(refusal));
}
