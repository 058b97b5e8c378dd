using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Makes the fact of the reveal from the custodian's key and the marks that were read on the tyres.</summary>
public static class Opener
{
    /// <summary>The fact: who is who, and how commitment and marks came out.</summary>
    /// <param name="study">The study, all predictions locked.</param>
    /// <param name="key">The custodian's key.</param>
    /// <param name="marks">What was read on the tyres, code by code.</param>
    /// <param name="readers">Who read it.</param>
    public static KeyOpened Fact(Study study, KeySheet key, IEnumerable<MarkRead> marks, IEnumerable<string> readers)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(key);
        bool? holds = study.Fitting?.Commitment is { } published ? Commitment.Of(key) == published : null;
        return new KeyOpened(
            [.. key.Places.Select(place => new CodedSpec(place.Code, place.Spec))],
            key.ControlSpec,
            key.Nonce,
            holds,
            [.. marks],
            [.. readers]);
    }

    /// <summary>Reads a mark typed as <c>417=NAME</c>; an objection where it is none, or no code of the study.</summary>
    public static (MarkRead? Mark, Objection? Objection) Mark(string typed, Study study)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(study);
        string[] halves = typed.Split('=', 2, StringSplitOptions.TrimEntries);
        ImmutableArray<SpecCode> codes = [.. study.Codes];
        return halves.Length == 2 && halves[1].Length > 0 && SpecCode.Parse(halves[0]) is { } code && codes.Contains(code)
            ? (new MarkRead(code, halves[1]), null)
            : (null, new Objection("a mark names a code and what stands on its tyres", $"give 'CODE=NAME' for each of {string.Join(", ", codes)}"));
    }
}
