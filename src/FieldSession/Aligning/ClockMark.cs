namespace FieldSession.Aligning;

/// <summary>One moment on two clocks: three knocks that the recorder heard, and the key that the co-driver hit at the third.</summary>
/// <param name="LaptopS">When the key was hit, s on the laptop's clock.</param>
/// <param name="RecorderS">When the third knock was heard, s on the clock of recorder or log.</param>
public readonly record struct ClockMark(double LaptopS, double RecorderS)
{
    /// <summary>Half-range of the key, s; own choice, no source.</summary>
    public const double KeyHalfRangeS = 0.5;
}
