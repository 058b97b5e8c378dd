using System.Collections.Immutable;

namespace FieldSession.Acoustics;

/// <summary>What a recording held. Levels are in dB re mean square 1; <see cref="WindowLevels.Raised"/> adds a chain's gain.</summary>
public sealed record RecordingLevels
{
    /// <summary>Length of the recording, s.</summary>
    public required double Seconds { get; init; }

    /// <summary>Times that the recorder clipped: three and more neighbouring samples equal at full scale.</summary>
    public required int ClipEvents { get; init; }

    /// <summary>The windows in the order asked for.</summary>
    public required ImmutableArray<WindowLevels> Windows { get; init; }

    /// <summary>The low branch of every impact, in the order asked for; never stored.</summary>
    public required ImmutableArray<ImmutableArray<double>> Impacts { get; init; }

    /// <summary>Samples a second of the low branch.</summary>
    public required double LowRateHz { get; init; }

    /// <summary>The A level as it goes by; never stored.</summary>
    public required LevelTrace Trace { get; init; }
}
