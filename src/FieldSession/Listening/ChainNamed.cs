using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>What a chain is made of: recorder, microphone, place, gain, file settings.</summary>
/// <param name="Name">Its name, one word.</param>
/// <param name="Words">What it is made of.</param>
public sealed record ChainNamed(string Name, string Words) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileDataAreOpen(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        NamedChain chain = new(Name, Words);
        return (study with { Chains = study.Chains.RemoveAll(known => known.Name == Name).Add(chain) }).Undoably(
            study,
            mark,
            $"chain {Name}"
        );
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new($"chain {Name}: {Words}");
}

/// <summary>The gain of a chain was found by the calibrator's tone in a file, or given.</summary>
/// <param name="Gain">The gain.</param>
public sealed record ChainCalibrated(ChainGain Gain) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileDataAreOpen(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);

        // the same file listened to again, or a gain given again, says the same thing better
        bool IsThis(ChainGain known) => known.Chain == Gain.Chain && known.Sha256 == Gain.Sha256;
        return study with { ChainGains = study.ChainGains.RemoveAll(IsThis).Add(Gain), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(ListeningWords.ChainIsCalibrated(ChainCalibration.Of(after, Gain.Chain)));
}
