using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using FieldSession.State;

namespace FieldSession.Sealing;

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
