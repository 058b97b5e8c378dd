using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Reads what is typed at the reveal: marks on the tyres and lines of a paper key.</summary>
public static class Opener
{
    /// <summary>Reads a mark typed as <c>417=NAME</c>; an objection where it is none, or no code of the study.</summary>
    public static (MarkRead? Mark, Objection? Objection) Mark(string typed, Study study) => Halves(typed, study) is { } halves
        ? (new MarkRead(halves.Code, halves.Spec), null)
        : (null, new Objection(RevealingWords.WhatMarkNames, RevealingWords.GiveNameOfEachCode(Codes(study))));

    /// <summary>Reads a line of a paper key typed as <c>417=NAME</c>; an objection where it is none, or no code of the study.</summary>
    public static (CodedSpec? Line, Objection? Objection) PaperLine(string typed, Study study) =>
        Halves(typed, study) is { } halves && SealableText.FaultIn(halves.Spec) is null
            ? (new CodedSpec(halves.Code, halves.Spec), null)
            : (null, new Objection(RevealingWords.WhatPaperLineNames, RevealingWords.GiveNameOfEachCode(Codes(study))));

    private static (SpecCode Code, string Spec)? Halves(string typed, Study study)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(study);
        string[] halves = typed.Split('=', 2, StringSplitOptions.TrimEntries);
        ImmutableArray<SpecCode> codes = [.. study.Codes];
        return halves.Length == 2 && halves[1].Length > 0 && SpecCode.Parse(halves[0]) is { } code && codes.Contains(code)
            ? (code, halves[1])
            : null;
    }

    private static string Codes(Study study) => string.Join(", ", study.Codes);
}
