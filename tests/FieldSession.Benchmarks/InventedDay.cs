using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>A day drawn from a model: its run order, its scatter, and what goes wrong on it. B minus A is the true difference.</summary>
internal sealed record InventedDay(string Order, int Segments = 10)
{
    private const double TrafficMeanDb = 3;
    private const double ClearTrafficDb = 1;
    private const double RangeDb = 3;
    private const double MinutesApart = 35;

    public double RunSdDb { get; init; } = 0.4;

    public double ReadingSdDb { get; init; } = 0.75;

    public double DifferenceDb { get; init; }

    /// <summary>C, D, ... minus A.</summary>
    public double LaterDifferenceDb { get; init; }

    /// <summary>Readings of every code but A that are lost, besides <see cref="MissingShare"/>, which is then of A's alone.</summary>
    public double LostOfOthersShare { get; init; }

    /// <summary>How much the difference varies over the segments.</summary>
    public double DifferenceSdDb { get; init; }

    /// <summary>Straight drift from the first run to the last.</summary>
    public double DriftDb { get; init; }

    public double MissingShare { get; init; }

    /// <summary>Readings that traffic raises by an exponential amount of mean 3 dB.</summary>
    public double TrafficShare { get; init; }

    /// <summary>Of those raised by 1 dB and more, the share that is flagged.</summary>
    public double FlaggedShare { get; init; }

    /// <summary>Flagged without any reason.</summary>
    public double SpoiltShare { get; init; }

    /// <summary>Whether both ends of a range are read in whole dB.</summary>
    public bool WholeDb { get; init; }

    /// <summary>How many of each 14 segments are impacts.</summary>
    public int Impacts { get; init; }

    /// <summary>Session, car and slot of each run, a letter each; null: one session, one car, one after the other.</summary>
    public (string? Sessions, string? Cars, string? Slots) Shared { get; init; }

    /// <summary>How far sessions, cars and slots lie apart.</summary>
    public double SharedSdDb { get; init; }

    /// <summary>A code minus A.</summary>
    public double DifferenceOfDb(char code) =>
        code switch
        {
            'A' => 0,
            'B' => DifferenceDb,
            _ => LaterDifferenceDb,
        };

    /// <summary>Draws the day.</summary>
    /// <returns>The readings, and the true difference over all segments.</returns>
    public (MeasuredDay Day, double TrueDb) Draw(RepeatableLot lot)
    {
        double[] differences = [.. Enumerable.Range(0, Segments).Select(_ => DifferenceDb + DifferenceSdDb * lot.Normal())];
        List<MeasuredLevel> levels = new(Order.Length * Segments);
        double[] shared = SharedDb(lot);
        for (int run = 0; run < Order.Length; run++)
        {
            double runDb = shared[run] + RunSdDb * lot.Normal() + DriftDb * run / Math.Max(1, Order.Length - 1);
            for (int segment = 0; segment < Segments; segment++)
            {
                double levelDb =
                    60
                    + segment % 7
                    + runDb
                    + (Order[run] == 'B' ? differences[segment] : DifferenceOfDb(Order[run]))
                    + ReadingSdDb * lot.Normal();
                Add(levels, run, segment, levelDb, lot);
            }
        }

        return (new MeasuredDay(levels), differences.Average());
    }

    private void Add(List<MeasuredLevel> levels, int run, int segment, double levelDb, RepeatableLot lot)
    {
        double trafficDb = lot.Share() < TrafficShare ? lot.Exponential(TrafficMeanDb) : 0;
        bool flagged = trafficDb > ClearTrafficDb && lot.Share() < FlaggedShare;
        (double low, double high) = Read(levelDb + trafficDb);
        if (lot.Share() < LostShare(run))
        {
            return;
        }

        bool isImpact = segment % 14 >= 14 - Impacts;
        levels.Add(
            new MeasuredLevel(
                run + 1,
                Order[run].ToString(),
                $"s{segment}",
                isImpact ? "impact"
                    : segment < 3 ? "smooth"
                    : "coarse",
                isImpact ? MeasureClass.Impact : MeasureClass.Steady,
                low,
                high,
                flagged || lot.Share() < SpoiltShare,
                null,
                MinutesApart * run,
                Of(Shared.Cars, run),
                Of(Shared.Slots, run),
                Of(Shared.Sessions, run)
            )
        );
    }

    private double LostShare(int run) => LostOfOthersShare > 0 && Order[run] != 'A' ? LostOfOthersShare : MissingShare;

    private static string? Of(string? letters, int run) => letters?[run].ToString();

    private double[] SharedDb(RepeatableLot lot)
    {
        double[] sum = new double[Order.Length];
        foreach (string letters in new[] { Shared.Sessions, Shared.Cars, Shared.Slots }.OfType<string>())
        {
            Dictionary<char, double> shift = letters.Distinct().ToDictionary(letter => letter, _ => SharedSdDb * lot.Normal());
            for (int run = 0; run < sum.Length; run++)
            {
                sum[run] += shift[letters[run]];
            }
        }

        return sum;
    }

    private (double Low, double High) Read(double levelDb) =>
        WholeDb ? (Math.Round(levelDb - RangeDb / 2), Math.Round(levelDb + RangeDb / 2)) : (levelDb, levelDb);
}
