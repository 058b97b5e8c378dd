using System.Collections.Immutable;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Terminal.Commands;

/// <summary>Seals a fitting away from the study: the custodian needs the plan alone, and the crew gets a public file.</summary>
internal static class SealAway
{
    /// <summary>Writes the key file and the public file; neither where one of them can't be written.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(SealWords words, Surroundings outside)
    {
        if (StartCommand.PlanIn(words.Study, outside) is not { } plan)
        {
            return ExitCode.Wrong;
        }

        KeyMaking making = new(words, outside);
        int code = making.OpenEarlier(plan.StudyName);
        if (code != ExitCode.Done)
        {
            return code;
        }

        if (WhyNotFrom(words, plan, making.Earlier) is { } why)
        {
            outside.Error.WriteLine(why);
            return ExitCode.Wrong;
        }

        if ((KeyFile.ObjectionToPlace(words.Key!) ?? KeyFile.ObjectionToPlace(words.Public!)) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.Wrong;
        }

        code = making.Draw(plan, DayOf(plan, words, making.Earlier), out KeySheet? key);
        return key is null ? code : Write(key, making.Passphrase, words, outside);
    }

    private static int Write(KeySheet key, string passphrase, SealWords words, Surroundings outside)
    {
        if (outside.KeyFile.Seal(words.Key!, key, passphrase) is { } refused)
        {
            outside.Error.WriteLine(refused);
            return ExitCode.Wrong;
        }

        PublicCodes codes = PublicCodes.Of(key)!;
        try
        {
            PublicCodesFile.Write(words.Public!, codes);
        }
        catch (Exception unwritten) when (unwritten is IOException or UnauthorizedAccessException)
        {
            File.Delete(words.Key!);
            throw;
        }

        outside.Output.WriteLine(
            $"sealed: codes {string.Join(", ", codes.Codes.Select(code => code.Digits).Order(StringComparer.Ordinal))}"
        );
        outside.Output.WriteLine($"commitment {codes.Commitment}");
        if (SecretPlace.ObjectionTo(words.Key!, key.StudyName) is { } near)
        {
            outside.Error.WriteLine(CustodianWords.KeyIsNearStudy(words.Key!, near.Why));
        }

        SealCommand.SayNext(words, outside);
        return ExitCode.Done;
    }

    private static string? WhyNotFrom(SealWords words, Plan plan, KeySheet? earlier) =>
        earlier switch
        {
            { Plan: null } => CustodianWords.EarlierKeyKnowsNoOrder,
            not null when words.FromRun is null => CustodianWords.SayFromRun,
            _ when words.FromRun is { } run && (run < 1 || run > plan.Order.Count) => CustodianWords.FromRunIsOutOfOrder(plan.Order.Count),
            _ => null,
        };

    private static FittingPlan DayOf(Plan plan, SealWords words, KeySheet? earlier)
    {
        int firstRun = words.FromRun ?? 1;
        FittingPlan day = new((earlier?.Plan?.Number ?? 0) + 1, PlanDigest.Of(plan), plan.Order, plan.CarOrder) { FirstRun = firstRun };
        return earlier is null
            ? day
            : day with
            {
                EarlierCodes = [.. earlier.Plan!.EarlierCodes, .. earlier.Codes],
                OnCars = OnCarsBefore(firstRun, earlier),
            };
    }

    // What was fitted last on each car before the run, by the list of the earlier key.
    private static ImmutableList<SetOnCar> OnCarsBefore(int run, KeySheet earlier) =>
        [
            .. FittingList
                .Of(earlier)
                .Where(row => row.Run < run)
                .GroupBy(row => row.Car ?? "")
                .Select(car => car.Last())
                .Select(row => new SetOnCar(row.Car, row.Line.Code, row.Line.Spec)),
        ];
}
