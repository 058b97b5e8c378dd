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
        return (study with { Chains = study.Chains.RemoveAll(known => known.Name == Name).Add(chain) }).Undoably(study, mark, $"chain {Name}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new($"chain {Name}: {Words}");
}
