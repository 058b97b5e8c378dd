using BenchmarkDotNet.Running;
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
        BenchmarkSwitcher.FromAssembly(typeof(ComparisonSpeed).Assembly).Run(args);
        break;
}
