namespace FieldSession.Tests.Making;

/// <summary>Knocks near the microphone, over the sound of a run.</summary>
internal static class Knocking
{
    /// <summary>Three knocks, the third of them at a time, over samples that are there.</summary>
    public static void Three(float[] samples, int rateHz, double thirdS)
    {
        Random lot = new(5);
        foreach (double at in new[] { thirdS - 0.85, thirdS - 0.43, thirdS })
        {
            for (int i = 0; i < rateHz / 10; i++)
            {
                samples[(int)(at * rateHz) + i] += (float)(0.2 * Normal(lot) * Math.Exp(-i * 64.0 / rateHz));
            }
        }
    }

    private static double Normal(Random lot) => Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble());
}
