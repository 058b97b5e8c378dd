namespace FieldSession.Comparing;

/// <summary>
/// The step that a meter's display goes by, seen from the numbers that were typed, and the scatter that its rounding makes in a level: a
/// value rounded to a step is a rectangle of variance step^2 / 12 (JCGM 100:2008, 4.3.7), the middle of a range with two ends rounded apart
/// half of it.
/// </summary>
/// <param name="Db">The step, dB; 0: the numbers go by no step (a computed level).</param>
/// <param name="VarianceDb2">Variance of a level by rounding alone, dB squared.</param>
internal sealed record DisplayStep(double Db, double VarianceDb2)
{
    private const double Slack = 1e-6;

    // from the coarsest that displays have; common practice, no source
    private static double[] Steps => [1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

    /// <summary>The step of the readings of a class that count.</summary>
    public static DisplayStep Of(MeasuredDay day, MeasureClass measureClass)
    {
        MeasuredLevel[] levels = [.. day.Levels.Where(level => !level.Spoilt && level.Class == measureClass)];
        double step = Steps.FirstOrDefault(each =>
            Array.TrueForAll(levels, level => IsMultiple(level.LowDb, each) && IsMultiple(level.HighDb, each))
        );
        double ends = Array.Exists(levels, level => level.WidthDb <= 0) ? 12 : 24;
        return new DisplayStep(step, step * step / ends);
    }

    private static bool IsMultiple(double db, double step) => Math.Abs(db / step - Math.Round(db / step)) < Slack;
}
