using FieldSession.Sealing;

namespace FieldSession.Tests.Sealing;

public sealed class MarksAreDrawnByLot
{
    private static readonly string[] Specs = ["STANDARD", "STIFFENED", "TALL", "SOFT", "WIDE", "OLD", "NEW", "RED", "BLUE"];

    [Fact]
    public void Every_spec_gets_a_mark_of_its_own_that_one_misread_letter_does_not_turn_into_another()
    {
        for (int seed = 1; seed <= 200; seed++)
        {
            string[] marks = [.. MarkLot.Draw(Specs, new SeededLot(seed)).Values];
            Assert.All(marks, mark => Assert.True(MarkLot.IsMark(mark), mark));
            Assert.All(
                from one in marks
                from other in marks
                where one != other
                select (one, other),
                pair => Assert.True(pair.one.Zip(pair.other).Count(letter => letter.First != letter.Second) >= 2)
            );
        }
    }

    [Fact]
    public void A_mark_is_bound_by_the_commitment()
    {
        KeySheet Key(string mark) =>
            new(
                "QW-0114",
                [new KeyLine(new("862"), "STIFFENED", mark), new KeyLine(new("417"), "STANDARD", "KTXM")],
                "STANDARD",
                KeyFolder.Key.Nonce
            );
        Assert.Equal(
            $"study=QW-0114|417=STANDARD|862=STIFFENED|marks=417:KTXM,862:CDFH|nonce={KeyFolder.Key.Nonce}",
            Commitment.CanonicalLine(Key("CDFH"))
        );
        Assert.NotEqual(Commitment.Of(Key("CDFH")), Commitment.Of(Key("CDFJ")));
    }

    [Fact]
    public void Marks_that_are_missing_for_one_or_the_same_for_two_are_no_key()
    {
        Assert.Throws<ArgumentException>(() =>
            new KeySheet(
                "QW-0114",
                [new KeyLine(new("862"), "STIFFENED", "KTXM"), new KeyLine(new("417"), "STANDARD")],
                "STANDARD",
                KeyFolder.Key.Nonce
            )
        );
        Assert.Throws<ArgumentException>(() =>
            new KeySheet(
                "QW-0114",
                [new KeyLine(new("862"), "STIFFENED", "KTXM"), new KeyLine(new("417"), "STANDARD", "KTXM")],
                "STANDARD",
                KeyFolder.Key.Nonce
            )
        );
    }

    [Fact]
    public void What_the_key_knows_of_its_day_comes_back_out_of_its_file()
    {
        using KeyFolder folder = new();
        FittingPlan plan = new(2, new string('a', 64), [new(0), new(1), new(1), new(0)], ["X", "Y", "X", "Y"])
        {
            FirstRun = 3,
            EarlierCodes = [new("531"), new("290")],
            OnCars = [new SetOnCar("X", new("531"), null), new SetOnCar("Y", new("290"), "STIFFENED")],
        };
        KeySheet key = new(
            "QW-0114",
            KeyFolder.Key.Places.Select((line, at) => line with { Mark = at == 0 ? "KTXM" : "CDFH" }),
            "STANDARD",
            KeyFolder.Key.Nonce,
            plan
        );
        KeySheet read = folder.Quick.Open(folder.Seal("a.key", key), KeyFolder.Passphrase).Key!;
        Assert.Equal(key.Places, read.Places);
        Assert.Equal(plan.Order, read.Plan!.Order);
        Assert.Equal(plan.CarOrder!, read.Plan.CarOrder!);
        Assert.Equal(plan.EarlierCodes, read.Plan.EarlierCodes);
        Assert.Equal(plan.OnCars, read.Plan.OnCars);
        Assert.Equal((2, 3, plan.PlanDigest), (read.Plan.Number, read.Plan.FirstRun, read.Plan.PlanDigest));
    }
}
