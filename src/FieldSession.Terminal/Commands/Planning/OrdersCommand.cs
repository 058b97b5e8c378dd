using System.CommandLine;
using FieldSession.Archiving;
using FieldSession.Comparing;
using FieldSession.Planning;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Store.Readings;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'orders'; null: not given.</summary>
/// <param name="Runs">How many runs are wanted.</param>
/// <param name="Take">Number of the order that is written into the plan.</param>
/// <param name="Drivers">Names of those who take turns at the wheel, cut by commas.</param>
/// <param name="Archive">CSV with the repeatability of earlier days; null: the archive that the plan names.</param>
internal sealed record AskedOrders(int? Runs = null, int? Take = null, string? Drivers = null, string? Archive = null);

/// <summary>The command 'orders': proposes orders of runs for a plan folder, judges its own, and writes the chosen one into it.</summary>
internal static class OrdersCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> folder = new("PLAN_DIR") { Description = "folder with plan.toml and route.csv" };
        Option<int?> runs = new("--runs") { Description = "how many runs; default: the usual lengths", HelpName = "N" };
        Option<int?> take = new("--take") { Description = "writes the order of this number into plan.toml", HelpName = "K" };
        Option<double?> turn = new("--turn-round")
        {
            Description = "minutes between two runs on the same tyres; default 10, assumed",
            HelpName = "MIN",
        };
        Option<double?> refit = new("--refit")
        {
            Description = "minutes where tyres are changed between two runs; default 60, assumed",
            HelpName = "MIN",
        };
        Option<string?> drivers = new("--drivers")
        {
            Description = "who take turns at the wheel; default: the plan's seats",
            HelpName = "NAME,NAME",
        };
        Option<string?> archive = new("--archive")
        {
            Description = "CSV with the repeatability of earlier days, as for 'compare'; default: the plan's archive",
            HelpName = "FILE",
        };
        Command command = new("orders", "proposes orders of runs, judges the plan's own, writes the chosen one")
        {
            folder,
            runs,
            take,
            drivers,
            turn,
            refit,
            archive,
        };
        command.SetAction(typed =>
            Run(
                typed.GetRequiredValue(folder),
                new AskedOrders(typed.GetValue(runs), typed.GetValue(take), typed.GetValue(drivers), typed.GetValue(archive)),
                new TurnRound(
                    typed.GetValue(turn) ?? new TurnRound().TurnRoundMinutes,
                    typed.GetValue(refit) ?? new TurnRound().RefitMinutes
                ),
                outside
            )
        );
        return command;
    }

    /// <summary>Prints the plan's own order and the proposals, or writes one.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string folder, AskedOrders asked, TurnRound between, Surroundings outside)
    {
        PlanReading reading = PlanFolder.Read(folder);
        if (reading.Plan is not { } plan)
        {
            foreach (PlanProblem problem in reading.Problems)
            {
                outside.Error.WriteLine(problem);
            }

            return ExitCode.Wrong;
        }

        if (WrongIn(asked, plan) is { } wrong)
        {
            outside.Error.WriteLine(wrong);
            return ExitCode.Wrong;
        }

        if ((asked.Archive is { } file ? ArchiveAt(file, outside) : ArchiveCommand.LentTo(folder, plan, outside)) is not { } archive)
        {
            return ExitCode.Wrong;
        }

        string[] drivers = DriversIn(asked);
        OrderProposal[] proposals =
        [
            .. OrderProposals.Of(plan.SpecCount, asked.Runs).Select(order => OrderSharing.Of(order, plan.Cars ?? [], drivers)),
        ];
        return asked.Take is { } chosen
            ? Take(folder, proposals, chosen, outside)
            : Print(
                plan,
                proposals,
                between,
                archive,
                outside,
                ArchiveCommand.RoadOf(folder, plan, outside with { Error = TextWriter.Null })
            );
    }

    private static string? WrongIn(AskedOrders asked, Plan plan)
    {
        int fewest = OrderProposals.FewestRuns(plan.SpecCount);
        if (asked.Runs is { } wanted && (wanted < fewest || wanted > OrderProposals.MostRuns))
        {
            return $"--runs {wanted}: orders of {plan.SpecCount} specs that cancel a drift have {fewest} to {OrderProposals.MostRuns} runs";
        }

        string? stranger = DriversIn(asked).FirstOrDefault(name => !plan.Crew.Any(member => CrewMember.SamePerson(member.Name, name)));
        return stranger is null
            ? null
            : $"--drivers: {PlanEditingWords.NotInCrew(stranger, string.Join(", ", plan.Crew.Select(member => member.Name)))}";
    }

    private static string[] DriversIn(AskedOrders asked) =>
        asked.Drivers?.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];

    private static IReadOnlyList<ArchiveLine>? ArchiveAt(string path, Surroundings outside)
    {
        if (!File.Exists(path))
        {
            outside.Error.WriteLine(
                $"--archive {FileProblem.Shown(path)}: there is no such file; give a CSV as 'compare --archive' reads it"
            );
            return null;
        }

        return ArchiveCommand.Rows(path, outside) is { } rows ? StudyTerms.LinesOf(rows.Select(row => row.Scatter)) : null;
    }

    private static int Print(
        Plan plan,
        OrderProposal[] proposals,
        TurnRound between,
        IReadOnlyList<ArchiveLine> archive,
        Surroundings outside,
        RoadAdvice? road
    )
    {
        string[] lines =
        [
            .. OrderWords.Of("own", OrderJudgement.Of(plan, OrderProposal.In(plan), between, archive)),
            "",
            .. proposals.SelectMany(
                (proposal, i) => OrderWords.Of($"{i + 1}", OrderJudgement.Of(plan, proposal, between, archive)).Append("")
            ),
            .. PlainLines.Wrapped("", PlanEditingWords.FirmWithBrackets),
            .. PlainLines.Wrapped("", OrderJudgement.AssumedWords(plan, between, archive)),
            .. road is null ? [] : RoadWords.Of(road),
            .. PlainLines.Wrapped(
                "",
                $"On the next day: {string.Join(' ', OrderProposals.NextDay(plan.Order))} (the plan's own order backwards; where "
                    + "it reads the same, the candidates change places)."
            ),
            .. PlainLines.Wrapped("", "'orders PLAN_DIR --take K' writes order K into plan.toml."),
        ];
        foreach (string line in lines)
        {
            outside.Output.WriteLine(line);
        }

        return ExitCode.Done;
    }

    private static int Take(string folder, OrderProposal[] proposals, int chosen, Surroundings outside)
    {
        if (chosen < 1 || chosen > proposals.Length)
        {
            outside.Error.WriteLine($"--take {chosen}: there are orders 1 to {proposals.Length}; 'orders PLAN_DIR' shows them");
            return ExitCode.Wrong;
        }

        PlanFolder.WriteOrder(folder, proposals[chosen - 1]);
        outside.Output.WriteLine($"plan.toml now has order {proposals[chosen - 1]}");
        return ExitCode.Done;
    }
}
