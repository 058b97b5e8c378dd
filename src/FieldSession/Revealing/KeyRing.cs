using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>
/// The custodian's keys of a study, one for each fitting: unlocked key files, or a paper key as it was typed in. Whoever
/// holds the ring can make the fact of the reveal with it and can't look into it before.
/// </summary>
public sealed class KeyRing
{
    private readonly ImmutableList<KeySheet> _sheets;
    private readonly ImmutableList<CodedSpec> _paper;
    private readonly string? _paperControl;

    private KeyRing(ImmutableList<KeySheet> sheets, ImmutableList<CodedSpec> paper, string? paperControl)
    {
        _sheets = sheets;
        _paper = paper;
        _paperControl = paperControl;
    }

    /// <summary>A ring without keys.</summary>
    public static KeyRing Empty { get; } = new([], [], null);

    /// <summary>How many keys of the study's fittings, of those that a key file was made for, are not on the ring yet.</summary>
    public int KeysLacking(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Fittings.Count(fitting =>
            fitting.Commitment is not null && !_sheets.Exists(sheet => sheet.Codes.Any(fitting.Codes.Contains))
        );
    }

    /// <summary>The codes that were driven and that no key on the ring names.</summary>
    public IEnumerable<SpecCode> CodesLacking(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.DrivenCodes.Except(Named);
    }

    /// <summary>The ring with the key of one more file.</summary>
    public KeyRing With(KeySheet key) => new(_sheets.Add(key), _paper, _paperControl);

    /// <summary>The ring with a paper key.</summary>
    /// <param name="lines">Which spec each code means.</param>
    /// <param name="control">The control spec; null: not told.</param>
    public KeyRing WithPaper(IEnumerable<CodedSpec> lines, string? control) =>
        new(_sheets, _paper.AddRange(lines), control ?? _paperControl);

    /// <summary>What rules out opening a study with these keys; null: nothing. No spec is named.</summary>
    public Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        SpecCode[] twice = [.. Named.CountBy(code => code).Where(code => code.Value > 1).Select(code => code.Key)];
        if (twice.Length > 0)
        {
            return new Objection(RevealingWords.CodesInTwoKeys(InWords(twice)), RevealingWords.GiveKeyOfEachFittingOnce);
        }

        return ObjectionToPaper(study) ?? ObjectionToControl() ?? KeyGate.ObjectionToMissing(study, Named);
    }

    /// <summary>The fact of the reveal.</summary>
    /// <param name="study">The study, all predictions locked.</param>
    /// <param name="marks">What was read on the tyres, code by code.</param>
    /// <param name="readers">Who read it.</param>
    /// <param name="earlier">Readings that did not agree and were made again; null: none.</param>
    public KeyOpened Fact(
        Study study,
        IEnumerable<MarkRead> marks,
        IEnumerable<string> readers,
        IReadOnlyCollection<MarkReading>? earlier = null
    )
    {
        ArgumentNullException.ThrowIfNull(study);
        KeySheet?[] byFitting = [.. study.Fittings.Select(fitting => _sheets.Find(sheet => sheet.Codes.Any(fitting.Codes.Contains)))];
        string?[] nonces = [.. byFitting.Select(sheet => sheet?.Nonce)];
        SpecCode[] notDriven = [.. Named.Except(study.DrivenCodes)];
        KeyOpened fact = new(
            [.. byFitting.OfType<KeySheet>().Concat(_sheets).Distinct().SelectMany(LinesOf), .. _paper],
            _sheets.Select(sheet => sheet.ControlSpec).FirstOrDefault() ?? _paperControl,
            nonces.FirstOrDefault(),
            null,
            [.. marks],
            [.. readers],
            nonces.Length > 1 ? [.. nonces.Skip(1)] : null,
            notDriven.Length > 0 ? [.. notDriven] : null,
            earlier is { Count: > 0 } ? [.. earlier] : null
        );
        return fact with { CommitmentHolds = CommitmentProof.Of(study, fact) };
    }

    /// <summary>How many keys hang on it, never what is in them.</summary>
    public override string ToString() => $"{_sheets.Count + (_paper.IsEmpty ? 0 : 1)} keys";

    private IEnumerable<SpecCode> Named => [.. _sheets.SelectMany(sheet => sheet.Codes), .. _paper.Select(line => line.Code)];

    // who published a commitment has a key file, and only that file can show that nothing was changed
    private Objection? ObjectionToPaper(Study study)
    {
        SpecCode[] inFile =
        [
            .. _paper
                .Select(line => line.Code)
                .Intersect(study.Fittings.Where(fitting => fitting.Commitment is not null).SelectMany(fitting => fitting.Codes)),
        ];
        return inFile.Length > 0
            ? new Objection(RevealingWords.CodesAreSealedInFile(InWords(inFile)), RevealingWords.GiveKeyFileInstead)
            : null;
    }

    private Objection? ObjectionToControl()
    {
        string[] controls = [.. _sheets.Select(sheet => sheet.ControlSpec).Concat(_paperControl is null ? [] : [_paperControl])];
        if (controls.Skip(1).Any(other => !CrewMember.SamePerson(controls[0], other)))
        {
            return new Objection(RevealingWords.KeysNameDifferentControls, RevealingWords.LookWhoseKeysTheyAre);
        }

        bool isNamed = _paperControl is null || _sheets.Count > 0 || _paper.Any(line => CrewMember.SamePerson(line.Spec, _paperControl));
        return isNamed ? null : new Objection(RevealingWords.ControlNotOnPaperKey, RevealingWords.WriteControlAsOnKey);
    }

    private static IEnumerable<CodedSpec> LinesOf(KeySheet sheet) =>
        sheet.Places.Select(place => new CodedSpec(place.Code, place.Spec, place.Mark));

    private static string InWords(SpecCode[] codes) => string.Join(", ", codes);
}

/// <summary>What came of trying a key file: the ring with its key, or why not.</summary>
/// <param name="Ring">The ring with one more key; null where the file did not open.</param>
/// <param name="Words">Why it did not open and what to do; empty where it did.</param>
/// <param name="AskAgain">Whether the passphrase should be asked for again; else it is the file that is wrong.</param>
/// <param name="NeedsSecond">Whether two people hold the key, and the second passphrase is to be asked for.</param>
public sealed record KeyTried(KeyRing? Ring, string Words, bool AskAgain, bool NeedsSecond = false);

/// <summary>Reads what is typed at the reveal: marks on the tyres and lines of a paper key.</summary>
public static class Opener
{
    /// <summary>Reads a mark typed as <c>417=NAME</c>; an objection where it is none, or no code of the study.</summary>
    public static (MarkRead? Mark, Objection? Objection) Mark(string typed, Study study) =>
        Halves(typed, study) is { } halves
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
