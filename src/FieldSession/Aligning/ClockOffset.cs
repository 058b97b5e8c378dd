namespace FieldSession.Aligning;

/// <summary>How the clock of a recorder, or of a meter's log, differs from the laptop's: recorder = laptop + offset.</summary>
/// <param name="OffsetS">The offset at the reference time, s.</param>
/// <param name="HalfRangeS">The offset lies within this of the truth, s.</param>
/// <param name="Source">What it is known by.</param>
/// <param name="AtLaptopS">The reference time, s on the laptop's clock.</param>
/// <param name="RateError">Seconds by which the recorder gains in one second of the laptop; 0: not known to differ.</param>
public sealed record ClockOffset(double OffsetS, double HalfRangeS, ClockSource Source, double AtLaptopS = 0, double RateError = 0)
{
    /// <summary>
    /// Half-range of the time in a file or of a file's own times, s: whole seconds, and how late a recorder writes them; own choice, no
    /// source.
    /// </summary>
    public const double FileTimeHalfRangeS = 2;

    /// <summary>The time on the recorder's clock at a time on the laptop's, s.</summary>
    public double RecorderS(double laptopS) => laptopS + OffsetS + (RateError * (laptopS - AtLaptopS));

    /// <summary>
    /// The offset by marks: their mean. Where the first and the last differ by more than two keys can be off, the clocks run at different
    /// rates, and the offset follows the straight line through all marks. Null: there is no mark.
    /// </summary>
    public static ClockOffset? OfMarks(IReadOnlyCollection<ClockMark> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        if (marks.Count == 0)
        {
            return null;
        }

        double laptop = marks.Average(mark => mark.LaptopS);
        double offset = marks.Average(mark => mark.RecorderS - mark.LaptopS);
        double spread = marks.Max(mark => mark.RecorderS - mark.LaptopS) - marks.Min(mark => mark.RecorderS - mark.LaptopS);
        double squares = marks.Sum(mark => (mark.LaptopS - laptop) * (mark.LaptopS - laptop));
        double rate =
            spread > 2 * ClockMark.KeyHalfRangeS && squares > 0
                ? marks.Sum(mark => (mark.LaptopS - laptop) * (mark.RecorderS - mark.LaptopS - offset)) / squares
                : 0;
        double worst = marks.Max(mark => Math.Abs(mark.RecorderS - mark.LaptopS - offset - (rate * (mark.LaptopS - laptop))));
        return new(offset, Math.Max(ClockMark.KeyHalfRangeS, worst), ClockSource.Marks, laptop, rate);
    }

    /// <summary>
    /// Whether two ways of knowing the offset contradict each other at a time: their ranges do not meet, even if the one by typed levels is
    /// a typing delay of 2 s early and both are 1 s wider.
    /// </summary>
    /// <param name="other">The other way.</param>
    /// <param name="laptopS">The time, s on the laptop's clock.</param>
    public bool Contradicts(ClockOffset other, double laptopS)
    {
        ArgumentNullException.ThrowIfNull(other);
        double distance = Math.Abs(Known(laptopS) - other.Known(laptopS));
        return distance > HalfRangeS + other.HalfRangeS + WideningS;
    }

    private const double WideningS = 1;
    private const double TypingS = 2;

    private double Known(double laptopS) => RecorderS(laptopS) + (Source == ClockSource.TypedLevels ? TypingS : 0);
}

/// <summary>What an offset between two clocks is known by, best first.</summary>
public enum ClockSource
{
    /// <summary>Knocks and a key.</summary>
    Marks,

    /// <summary>The time in the file, or the file's own times.</summary>
    FileTime,

    /// <summary>Somebody gave it.</summary>
    Given,

    /// <summary>Typed levels held against the levels of the recording; nearly blind towards too early.</summary>
    TypedLevels,
}

/// <summary>One moment on two clocks: three knocks that the recorder heard, and the key that the co-driver hit at the third.</summary>
/// <param name="LaptopS">When the key was hit, s on the laptop's clock.</param>
/// <param name="RecorderS">When the third knock was heard, s on the clock of recorder or log.</param>
public readonly record struct ClockMark(double LaptopS, double RecorderS)
{
    /// <summary>Half-range of the key, s; own choice, no source.</summary>
    public const double KeyHalfRangeS = 0.5;
}
