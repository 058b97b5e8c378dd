using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>Days drawn from the model that the method assumes, for simulating and for measuring speed.</summary>
internal sealed record InventedDay(string Order, int Segments, double RunSdDb, double ReadingSdDb, double DifferenceDb, double SpoiltShare = 0)
{
    public MeasuredDay Draw(Random lot)
    {
        List<MeasuredLevel> levels = new(Order.Length * Segments);
        for (int run = 0; run < Order.Length; run++)
        {
            double runEffectDb = RunSdDb * Normal(lot) + (Order[run] == 'B' ? DifferenceDb : 0);
            for (int s = 0; s < Segments; s++)
            {
                double levelDb = 60 + s % 7 + runEffectDb + ReadingSdDb * Normal(lot);
                levels.Add(new MeasuredLevel(
                    run, Order[run].ToString(), $"s{s}", s % 2 == 0 ? "smooth" : "coarse", MeasureClass.Steady, levelDb, levelDb,
                    lot.NextDouble() < SpoiltShare, null, 35 * run));
            }
        }

        return new MeasuredDay(levels);
    }

    private static double Normal(Random lot) => Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble());
}
