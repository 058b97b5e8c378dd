using System.Globalization;
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
            new FittingPlan(1, PlanDigest.Of(plan), plan.Order, plan.CarOrder)
        );
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

    private static SpecList Specs(DemoStudy demo) =>
        SpecList.Parse(demo.Text("specs.txt"), demo.Codes.Length, out Objection? refusal)
        ?? throw new InvalidDataException(DemoWords.SpecListIsWrong(refusal));
}

/// <summary>The clock of a day that was driven long ago: it is at the time that the day's remarks say.</summary>
internal sealed class DemoClock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 2, 3, 8, 0, 0, TimeSpan.Zero);

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => _now;

    /// <inheritdoc/>
    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    /// <inheritdoc/>
    public override long GetTimestamp() => _now.UtcTicks;

    /// <summary>Sets the clock where a remark says when, such as <c># at 2026-02-03T09:15</c>.</summary>
    public void Follow(string line)
    {
        const string At = "# at ";
        if (
            line.StartsWith(At, StringComparison.Ordinal)
            && DateTimeOffset.TryParse(line[At.Length..] + "Z", CultureInfo.InvariantCulture, out DateTimeOffset said)
        )
        {
            _now = said;
        }
    }

    /// <summary>Moves on, as typing and driving take their time.</summary>
    public void Advance(TimeSpan by) => _now += by;
}

/// <summary>A clock that runs on from a moment of the demo day, so that the run that is left to drive follows the others in time.</summary>
/// <param name="real">The clock that runs.</param>
/// <param name="from">The moment it runs on from.</param>
internal sealed class LaterClock(TimeProvider real, DateTimeOffset from) : TimeProvider
{
    private readonly TimeSpan _shift = from - real.GetUtcNow();

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => real.GetUtcNow() + _shift;

    /// <inheritdoc/>
    public override long GetTimestamp() => real.GetTimestamp();

    /// <inheritdoc/>
    public override long TimestampFrequency => real.TimestampFrequency;
}
