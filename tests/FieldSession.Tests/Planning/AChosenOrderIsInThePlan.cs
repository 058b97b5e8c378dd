using FieldSession.Planning;
using FieldSession.Store.Planning;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Planning;

public sealed class AChosenOrderIsInThePlan : IDisposable
{
    private const string Written =
        "# our ring\nspecs = 2  # winter\norder = \"R 1 R\" # short\ncrew = [\"Ro\", \"Tam\"]\n\n[limits]\nwidth_warn_db = 5\n";
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-orders").FullName;

    public AChosenOrderIsInThePlan()
    {
        File.WriteAllText(Path.Combine(_folder, "plan.toml"), Written);
        File.WriteAllText(Path.Combine(_folder, "route.csv"), PlanTexts.Route);
    }

    private string PlanNow => File.ReadAllText(Path.Combine(_folder, "plan.toml"));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_order_line_changes_and_every_other_letter_stays()
    {
        Assert.Equal(ExitCode.Done, Run(new AskedOrders(8, 2)).Code);
        Assert.Equal(Written.Replace("R 1 R\" #", "R 1 1 R R 1 1 R\" #", StringComparison.Ordinal), PlanNow);
        Assert.Equal(8, PlanFolder.Read(_folder).Plan!.Order.Count);
    }

    [Fact]
    public void Cars_and_drivers_are_written_with_the_order_and_read_back()
    {
        File.WriteAllText(Path.Combine(_folder, "plan.toml"), "cars = [\"X\", \"Y\"]\n" + Written);
        Assert.Equal(ExitCode.Done, Run(new AskedOrders(8, 2, "Ro,Tam")).Code);
        PlanReading reading = PlanFolder.Read(_folder);
        Assert.Equal("X Y Y X Y X X Y", string.Join(' ', reading.Plan!.CarOrder!));
        Assert.Equal(8, reading.Plan.DriverOrder!.Count);
        Assert.Contains("[limits]\nwidth_warn_db = 5", PlanNow);
    }

    [Fact]
    public void The_orders_are_told_with_what_they_cancel_how_long_they_take_and_what_they_could_show()
    {
        (int code, string output) = Run(new AskedOrders());
        Assert.Equal(ExitCode.Done, code);
        string[] parts =
        [
            "own  R 1 R: 3 runs",
            "a steady drift (R on average at run 2, 1 at run 2)",
            "set and spec",
            "degrees of freedom",
            "Assumed, not measured",
            "tyres changed twice",
        ];
        Assert.All(parts.SkipLast(1), part => Assert.Contains(part, output));
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void What_earlier_days_showed_takes_the_place_of_what_is_assumed()
    {
        string archive = Path.Combine(Repository.Root, "tests/FieldSession.Tests/References/cases/06-aba-archive/archive.csv");
        (int code, string output) = Run(new AskedOrders(Archive: archive));
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Known from", output);
        Assert.NotEqual(
            Run(new AskedOrders()).Output.Split("could show")[1].Split("look out")[0],
            output.Split("could show")[1].Split("look out")[0]
        );
        Assert.Equal(ExitCode.Wrong, Run(new AskedOrders(Archive: Path.Combine(_folder, "none.csv"))).Code);
    }

    [Theory]
    [InlineData(2, null)]
    [InlineData(61, null)]
    [InlineData(4, 9)]
    public void What_can_not_be_is_refused_and_the_plan_stays(int runs, int? take)
    {
        Assert.Equal(ExitCode.Wrong, Run(new AskedOrders(runs, take)).Code);
        Assert.Equal(Written, PlanNow);
    }

    private (int Code, string Output) Run(AskedOrders asked)
    {
        StringWriter output = new();
        Surroundings outside = new()
        {
            Input = TextReader.Null,
            Output = output,
            Error = new StringWriter(),
            Clock = new StoppedClock(),
            Lot = new Sealing.SeededLot(1),
        };
        return (OrdersCommand.Run(_folder, asked, new TurnRound(), outside), output.ToString());
    }
}
