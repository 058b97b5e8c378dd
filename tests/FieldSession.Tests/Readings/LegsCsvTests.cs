using System.Text;
using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Store.Readings;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Readings;

public sealed class LegsCsvTests
{
    private const string Header = "day,car,code,distance_km,energy_kwh";

    private static FileRead<IReadOnlyList<LegRow>> Read(string text) =>
        LegsCsv.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), "legs.csv", null);

    [Fact]
    public void Columns_are_found_by_name_and_units_are_in_the_names()
    {
        LegFigures leg = Read(
            "note,CODE,car,day,Distance_mi,energy_kwh,air_start_f,air_end_c,wind_mph,speed_mph,start,minutes,driver\n"
                + ",417,X,1,132,38.6,50,12,10,60,09:10,135,Ro\n"
        )
            .Content![0]
            .Leg.Figures;
        Assert.Equal((132 * 1.609344, 38.6), (leg.Distance.Kilometres, leg.Energy.Amount));
        Assert.Equal(10, leg.AirAtStart!.Value.Celsius, 1e-9);
        Assert.Equal(12, leg.AirAtEnd!.Value.Celsius);
        Assert.Equal(4.4704, leg.Wind!.Value.MetresPerSecond, 1e-9);
        Assert.Equal((new TimeOnly(9, 10), 135.0, "Ro"), (leg.At!.Value, leg.Minutes!.Value, leg.Driver));
    }

    [Theory]
    [InlineData("", null, null)]
    [InlineData("t", SpoiltCause.Traffic, null)]
    [InlineData("wind", SpoiltCause.Wind, null)]
    [InlineData("yes", SpoiltCause.EntryDoubt, "cause not said")]
    [InlineData("flat tyre", SpoiltCause.EntryDoubt, "flat tyre")]
    public void A_spoilt_leg_comes_in_with_its_cause(string spoilt, SpoiltCause? cause, string? words)
    {
        LegRow row = Read($"{Header},spoilt\n1,X,417,200,36,{spoilt}\n").Content![0];
        Assert.Equal((2, cause, words), (row.Line, row.Leg.Spoilt, row.Leg.Words));
    }

    [Theory]
    [InlineData("1,X,417,0,36", "line 2, column 'distance_km': '0': not readable; kilometres above 0")]
    [InlineData("1,X,417,200,-3", "line 2, column 'energy_kwh'")]
    [InlineData("1,X,417,200,\"36,5\"", "a number with a comma")]
    [InlineData("0,X,417,200,36", "column 'day'")]
    [InlineData("1,X,41,200,36", "column 'code'")]
    [InlineData("1,,417,200,36", "lacks the car")]
    [InlineData("1,X,417,200,", "lacks the energy")]
    [InlineData("1,X,417,200", "4 values")]
    public void A_wrong_row_is_said_by_line_and_column_and_nothing_is_taken(string row, string problem)
    {
        FileRead<IReadOnlyList<LegRow>> read = Read($"{Header}\n{row}\n1,Y,862,200,37\n");
        Assert.Null(read.Content);
        Assert.Contains(problem, Assert.Single(read.Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Charge_that_rises_is_refused_by_line()
    {
        FileRead<IReadOnlyList<LegRow>> read = Read(
            "day,car,code,distance_km,soc_start_percent,soc_end_percent,usable_kwh\n1,X,417,200,31,80,75\n"
        );
        Assert.Contains("legs.csv, line 2: the state of charge rises", Assert.Single(read.Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_column_and_an_empty_file_are_said()
    {
        Assert.Contains(
            "column 'code': the column is missing",
            Read("day,car,distance_km\n1,X,2\n").Problems[0].ToString(),
            StringComparison.Ordinal
        );
        Assert.Contains("no leg below the header", Read(Header + "\n").Problems[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_export_writes_comes_in_again_as_the_same_comparison()
    {
        ADay day = new ADay().Typed(
            "leg day=1 car=X code=417 km=212.4 kwh=38.0 t0=6 t1=8 wind=2 kmh=96 at=09:10 driver=Ro",
            "leg day=1 car=Y code=862 km=212.4 soc=80-31 usable=75 t0=6 at=09:10",
            "leg day=2 car=X code=862 mi=132 kwh=38.4",
            "leg day=2 car=Y code=417 km=212.4 kwh=37.6 w shower, and \"sleet\""
        );
        ADay again = new();
        foreach (LegRow row in LegsCsv.Read(new MemoryStream(Csv(day)), "legs.csv", null).Content!)
        {
            Assert.True(again.Book.Write(row.Leg).IsWritten);
        }

        Assert.Equal(StudyLegs.Of(day.Study), StudyLegs.Of(again.Study));
        Assert.Equal(day.Study.Legs.Select(leg => leg.Spoilt), again.Study.Legs.Select(leg => leg.Spoilt));
    }

    [Fact]
    public void Fuel_goes_out_and_comes_in_as_it_was_typed()
    {
        ADay day = new ADay().Typed("leg day=1 car=X code=417 mi=132 gal=4.1", "leg day=1 car=Y code=862 km=212 l=14.2 tank=50");
        IReadOnlyList<LegRow> rows = LegsCsv.Read(new MemoryStream(Csv(day)), "legs.csv", null).Content!;
        Assert.Equal([Energy.Of(4.1, EnergyUnit.UsGallon), Energy.Of(14.2, EnergyUnit.Litre)], rows.Select(row => row.Leg.Figures.Energy));
    }

    [Fact]
    public void The_command_takes_each_row_as_one_act_and_a_second_time_refuses_them_all()
    {
        using Folder folder = new();
        File.WriteAllText(folder["legs.csv"], Header + "\n1,X,417,212.4,38.0\n1,Y,862,212.4,38.8\n1,Y,999,212.4,38.8\n");
        ADay day = new();
        (int code, string output, _) = Run(day, folder["legs.csv"]);
        Assert.Equal(ExitCode.No, code);
        Assert.Equal(2, day.Study.Legs.Count);
        Assert.StartsWith("ok 3 leg 1, day 1, X on 417", output, StringComparison.Ordinal);
        Assert.Contains("no 4: 999 is not a code of this study", output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.No, Run(day, folder["legs.csv"]).Code);
        Assert.Equal(2, day.Study.Legs.Count);
    }

    [Fact]
    public void The_command_takes_nothing_from_a_wrong_file_or_none()
    {
        using Folder folder = new();
        File.WriteAllText(folder["legs.csv"], Header + "\n1,X,417,212.4,38.0\n1,Y,862,0,38.8\n");
        ADay day = new();
        (int code, _, string error) = Run(day, folder["legs.csv"]);
        Assert.Equal(ExitCode.Wrong, code);
        Assert.Contains("line 3, column 'distance_km'", error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Wrong, Run(day, folder["none.csv"]).Code);
        Assert.Empty(day.Study.Legs);
    }

    private static byte[] Csv(ADay day) =>
        FieldSession.Store.Exports.Exports.All.Single(file => file.Name == "legs.csv").BytesOf(ExportSource.Of(day.Book));

    private static (int Code, string Output, string Error) Run(ADay day, string path)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        Surroundings outside = new()
        {
            Input = TextReader.Null,
            Output = output,
            Error = error,
            Clock = day.Clock,
            Lot = new Sealing.SeededLot(1),
        };
        return (LegsCommand.Run(day.Book, path, outside), output.ToString(), error.ToString());
    }
}
