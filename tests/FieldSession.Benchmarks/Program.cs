using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using FieldSession.Benchmarks;

switch (args)
{
    case ["simulate", .. string[] rest]:
        int days = rest.Length > 0 ? int.Parse(rest[0]) : 20_000;
        int seed = rest.Length > 1 ? int.Parse(rest[1]) : 1;
        ErrorRates.Print(Console.Out, days, seed);
        RealisticDays.Print(Console.Out, days, seed);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(ComparisonSpeed).Assembly).Run(
            args,
            // in this process: nothing is built anew, so that it runs wherever the project was built
            DefaultConfig.Instance.AddJob(Job.Default.WithWarmupCount(3).WithIterationCount(9).WithToolchain(InProcessEmitToolchain.Instance)));
        break;
}
