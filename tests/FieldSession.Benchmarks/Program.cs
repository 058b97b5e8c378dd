using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using FieldSession.Benchmarks;

switch (args)
{
    case ["all", .. string[] rest]:
        AllFigures.Run(Console.Out, rest.FirstOrDefault(word => word != "quick"), rest.Contains("quick"));
        break;
    case ["acts"]:
        BenchmarkRunner.Run<ActCosts>();
        break;
    case ["speed", .. string[] filter]:
        // nothing is built a second time; nine rounds, because a million rows take seconds each
        ManualConfig config = ManualConfig
            .Create(DefaultConfig.Instance)
            .AddJob(Job.Default.WithWarmupCount(3).WithIterationCount(9).WithToolchain(InProcessEmitToolchain.Instance))
            .WithArtifactsPath(Path.Combine(".artifacts", "benchmarks"));
        BenchmarkSwitcher
            .FromAssembly(typeof(ComparisonSpeed).Assembly)
            .Run(["--filter", filter.Length > 0 ? filter[0] : "*Speed*"], config);
        break;
    case ["simulate", .. string[] rest]:
        int days = rest.Length > 0 ? int.Parse(rest[0]) : 20_000;
        int seed = rest.Length > 1 ? int.Parse(rest[1]) : 1;
        ErrorRates.Print(Console.Out, days, seed);
        RealisticDays.Print(Console.Out, days, seed);
        Procedure.Print(Console.Out, days, seed);
        break;
    case ["procedure", .. string[] rest]:
        Procedure.Print(Console.Out, rest.Length > 0 ? int.Parse(rest[0]) : 20_000, rest.Length > 1 ? int.Parse(rest[1]) : 1);
        break;
    case ["shared", .. string[] rest]:
        SharedDays.Print(Console.Out, rest.Length > 0 ? int.Parse(rest[0]) : 20_000, rest.Length > 1 ? int.Parse(rest[1]) : 1);
        break;
    case ["safety", .. string[] rest]:
        Safety.Print(Console.Out, rest.Length > 0 ? int.Parse(rest[0]) : 2000, rest.Length > 1 ? int.Parse(rest[1]) : 5);
        break;
    case ["scale", .. string[] rest]:
        Scale.Print(Console.Out, rest.Length > 0 ? int.Parse(rest[0]) : 100_000);
        break;
    case ["make", string study, string readings]:
        Scale.Make(study, int.Parse(readings));
        break;
    case ["open", string study]:
        Scale.Open(Console.Out, study);
        break;
    default:
        Console.Error.WriteLine(
            "all [PROGRAM] [quick] | acts | speed [filter] | simulate [days a cell] [seed] | procedure [studies a cell] "
                + "[seed] | shared [studies a cell] [seed] | safety [lines] [pause ms] | scale [readings] | make STUDY READINGS "
                + "| open STUDY"
        );
        break;
}
