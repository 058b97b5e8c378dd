namespace FieldSession.Signals;

/// <summary>Takes samples one block after the other; a block has any length.</summary>
public interface ISampleTaker
{
    /// <summary>Takes the next samples, as numbers of full scale.</summary>
    void Take(ReadOnlySpan<double> samples);
}
