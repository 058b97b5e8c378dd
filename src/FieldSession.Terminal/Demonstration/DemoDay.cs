using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal.Demonstration;

/// <summary>The demo study: planned, sealed with the codes of its day, and driven by the lines that its co-driver typed.</summary>
internal static class DemoDay
{
    /// <summary>The passphrase of the demo's key file; a real one is known to the custodian only.</summary>
    public const string Passphrase = "quillmere custodian";

    /// <summary>How many runs the interactive demo finds driven; the last one is left to whoever tries it.</summary>
    public const int RunsDriven = 5;

    /// <summary>The code of each spec of the demo, the reference place first.</summary>
    private static string[] Codes => ["417", "862"];

    /// <summary>Writes the plan into an empty logbook and seals it.</summary>
    /// <returns>An exit code.</returns>
    public static int Lay(Logbook logbook, string keyPath, Surroundings outside)
    {
        PlanReading reading = PlanFolder.Parse(DemoFiles.Text("quillmere/plan.toml"), DemoFiles.Text("quillmere/route.csv"), "quillmere");
        Plan plan = reading.Plan ?? throw new InvalidDataException($"the demo's plan is wrong: {string.Join("; ", reading.Problems)}");
        int planned = Answer.To(logbook.Write(new PlanMade(plan)), outside);
        SpecList specs = SpecList.Parse(DemoFiles.Text("quillmere/specs.txt"), plan.SpecCount, out Objection? refusal)
            ?? throw new InvalidDataException($"the demo's spec list is wrong: {refusal}");
        KeySheet key = new(
            plan.StudyName,
            Codes.Zip(specs.Names, (code, spec) => new KeyLine(new SpecCode(code), spec)),
            specs.Control,
            Convert.ToHexStringLower(outside.Lot.Bytes(KeySheet.NonceBytes)));
        return Math.Max(planned, SealCommand.Seal(logbook, key, keyPath, Passphrase, outside));
    }

    /// <summary>Types the day's lines, at the times the day says; every line must be taken.</summary>
    /// <param name="logbook">The sealed study.</param>
    /// <param name="file">The demo file with the lines.</param>
    /// <param name="clock">The clock that follows the day.</param>
    /// <param name="runs">After how many runs to stop.</param>
    public static void Type(Logbook logbook, string file, DemoClock clock, int runs)
    {
        foreach (string line in DemoFiles.Lines(file))
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
                throw new InvalidDataException($"the demo's line '{line}' was not taken: {outcome.Objection}{outcome.NotSavedBecause}");
            }
        }
    }
}
