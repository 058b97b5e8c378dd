using BenchmarkDotNet.Running;
using FieldSession.Benchmarks;

switch (args)
{
    case ["acts"]:
        BenchmarkRunner.Run<ActCosts>();
        break;
    case ["simulate", .. string[] rest]:
        Simulation.Print(Console.Out, rest.Length > 0 ? int.Parse(rest[0]) : 20_000, rest.Length > 1 ? int.Parse(rest[1]) : 1);
        break;
    case ["speed"]:
        Speed.Print(Console.Out);
        break;
    default:
        Console.Error.WriteLine("acts | simulate [days a row] [seed] | speed");
        break;
}
