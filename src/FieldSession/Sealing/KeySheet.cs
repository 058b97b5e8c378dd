using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>The key: which spec each code means. The custodian keeps it; the study holds only its commitment.</summary>
public sealed class KeySheet
{
    /// <summary>Bytes of the nonce: 128 bit, so that the commitment can't be broken by trying out the few possible keys.</summary>
    public const int NonceBytes = 16;

    /// <summary>Takes a key as drawn, or as read back from the custodian's file.</summary>
    /// <param name="studyName">The study's short name.</param>
    /// <param name="places">Codes and specs by place; the first takes the reference place R.</param>
    /// <param name="controlSpec">The spec that all others are compared with.</param>
    /// <param name="nonce">32 lower-case hex digits.</param>
    /// <param name="plan">What the key knows of its day; null: nothing.</param>
    /// <exception cref="ArgumentException">A part is not as it must be; the message names the part, no spec.</exception>
    public KeySheet(string studyName, IEnumerable<KeyLine> places, string controlSpec, string nonce, FittingPlan? plan = null)
    {
        StudyName = studyName;
        Plan = plan;
        Places = [.. places];
        ControlSpec = controlSpec;
        Nonce = nonce;
        if (Fault() is string fault)
        {
            throw new ArgumentException(fault);
        }
    }

    /// <summary>The study's short name, such as "QW-0114".</summary>
    public string StudyName { get; }

    /// <summary>Codes and specs by place: the first takes R, then 1, 2, ...; 2..9 of them.</summary>
    public ImmutableList<KeyLine> Places { get; }

    /// <summary>The spec that all others are compared with.</summary>
    public string ControlSpec { get; }

    /// <summary>What keeps the commitment from being guessed: 128 bit drawn by lot, 32 lower-case hex digits.</summary>
    public string Nonce { get; }

    /// <summary>What the key knows of its day; null: nothing, as in the key files of earlier programs.</summary>
    public FittingPlan? Plan { get; }

    /// <summary>Whether the marks were drawn by lot; else each spec's name is its mark.</summary>
    public bool HasDrawnMarks => Places[0].Mark is not null;

    /// <summary>The codes by place, the first for R. They are no secret.</summary>
    public ImmutableList<SpecCode> Codes => [.. Places.Select(place => place.Code)];

    /// <summary>The code behind which the control hides.</summary>
    public SpecCode ControlCode => Places.First(place => place.Spec == ControlSpec).Code;

    /// <summary>Draws a key by lot: the codes, the spec behind each, and the place each takes in the order.</summary>
    /// <param name="studyName">The study's short name.</param>
    /// <param name="specs">The custodian's list.</param>
    /// <param name="used">Codes of earlier fittings of the study.</param>
    /// <param name="lot">Where chance comes from.</param>
    /// <param name="marks">The mark of each spec; null: its name is its mark.</param>
    /// <param name="plan">What the key is to know of its day; null: nothing.</param>
    /// <exception cref="ArgumentException">The study's name can't be in the canonical line.</exception>
    public static KeySheet Drawn(
        string studyName,
        SpecList specs,
        IReadOnlyCollection<SpecCode> used,
        ILot lot,
        ImmutableDictionary<string, string>? marks = null,
        FittingPlan? plan = null
    )
    {
        ArgumentNullException.ThrowIfNull(specs);
        ArgumentNullException.ThrowIfNull(lot);
        IReadOnlyList<SpecCode> codes = CodeLot.Draw(specs.Names.Count, used, lot);
        IReadOnlyList<string> names = CodeLot.Shuffled(specs.Names, lot);
        IReadOnlyList<KeyLine> places = CodeLot.Shuffled(codes.Zip(names, (code, name) => new KeyLine(code, name, marks?[name])), lot);
        return new KeySheet(studyName, places, specs.Control, Convert.ToHexStringLower(lot.Bytes(NonceBytes)), plan);
    }

    /// <summary>Whose key it is, never what is in it.</summary>
    public override string ToString() => $"key of {StudyName}";

    private string? Fault()
    {
        if (SealableText.FaultIn(StudyName) is string fault)
        {
            return SealingWords.StudyNameCantBeSealed(fault);
        }

        return FaultInCodes() ?? FaultInSpecs() ?? FaultInMarks() ?? (IsNonce(Nonce) ? null : SealingWords.NonceForm);
    }

    private string? FaultInCodes()
    {
        if (Places.Count is < SpecList.Fewest or > SpecList.Most)
        {
            return SealingWords.KeyHoldsTwoToNineCodes;
        }

        return Places.Any(place => SpecCode.Parse(place.Code.Digits) is null) ? SealingWords.CodeIsThreeDigits
            : Places.DistinctBy(place => place.Code).Count() < Places.Count ? SealingWords.TwoCodesAreSame
            : null;
    }

    private string? FaultInSpecs()
    {
        if (Places.Any(place => SealableText.FaultIn(place.Spec) is not null))
        {
            return SealingWords.SpecNameCantBeSealed;
        }

        return Places.DistinctBy(place => place.Spec, StringComparer.OrdinalIgnoreCase).Count() < Places.Count
                ? SealingWords.TwoSpecNamesAreSame
            : Places.All(place => place.Spec != ControlSpec) ? SealingWords.ControlIsNoneOfSpecs
            : null;
    }

    private string? FaultInMarks()
    {
        string[] marks = [.. Places.Select(place => place.Mark).OfType<string>()];
        return marks.Length == 0 || (marks.Length == Places.Count && marks.All(MarkLot.IsMark) && marks.Distinct().Count() == marks.Length)
            ? null
            : SealingWords.MarksAreNotAsDrawn;
    }

    private static bool IsNonce(string nonce) =>
        nonce is { Length: 2 * NonceBytes } && nonce.All(digit => char.IsAsciiHexDigitLower(digit) || char.IsAsciiDigit(digit));
}

/// <summary>
/// What the custodian publishes before the first run: the SHA-256 (FIPS 180-4) of one canonical line. It tells nobody who
/// is who, and after the reveal it shows that the key was not changed. The line is
/// <c>study=QW-0114|417=STANDARD|862=STIFFENED|nonce=8f1d6c0b2a4e49579d03c7e1b6a85f42</c>, codes in rising order,
/// hashed as UTF-8 without a line break. Where marks were drawn, <c>marks=417:KTX,862:MFD</c> is before the nonce.
/// </summary>
public static class Commitment
{
    /// <summary>The canonical line. It holds the spec names: secret until the reveal.</summary>
    public static string CanonicalLine(KeySheet key)
    {
        ArgumentNullException.ThrowIfNull(key);
        KeyLine[] lines = [.. key.Places.OrderBy(place => place.Code.Digits, StringComparer.Ordinal)];
        string pairs = string.Join('|', lines.Select(line => $"{line.Code.Digits}={line.Spec}"));
        string marks = key.HasDrawnMarks ? $"|marks={string.Join(',', lines.Select(line => $"{line.Code.Digits}:{line.Mark}"))}" : "";
        return $"study={key.StudyName}|{pairs}{marks}|nonce={key.Nonce}";
    }

    /// <summary>The commitment: 64 lower-case hex digits. It may be shown to everybody.</summary>
    public static string Of(KeySheet key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(CanonicalLine(key))));
}

/// <summary>
/// What the custodian hands to the crew where a fitting was sealed away from the study: the codes by place and the commitment, and
/// what they were drawn for. Nothing in it tells who is who.
/// </summary>
/// <param name="StudyName">The study's short name.</param>
/// <param name="PlanDigest">SHA-256 of the plan that the codes were drawn for, 64 hex digits.</param>
/// <param name="Fitting">Number of the fitting, from 1.</param>
/// <param name="Codes">The codes by place, the first for R.</param>
/// <param name="Commitment">SHA-256 of the key's canonical line, 64 hex digits.</param>
public sealed record PublicCodes(string StudyName, string PlanDigest, int Fitting, ImmutableList<SpecCode> Codes, string Commitment)
{
    /// <summary>What a key may tell; null: the key does not know its plan, as those of earlier programs.</summary>
    public static PublicCodes? Of(KeySheet key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Plan is { } plan
            ? new PublicCodes(key.StudyName, plan.PlanDigest, plan.Number, key.Codes, Sealing.Commitment.Of(key))
            : null;
    }

    /// <summary>SHA-256 (FIPS 180-4) of all of it: shows that nothing was cut off or mistyped on the way. It proves no author.</summary>
    public string Check()
    {
        string number = Fitting.ToString(CultureInfo.InvariantCulture);
        string line = $"study={StudyName}|plan={PlanDigest}|fitting={number}|codes={string.Join(',', Codes)}|commitment={Commitment}";
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(line)));
    }
}
