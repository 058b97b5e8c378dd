using System.Security.Cryptography;
using System.Text.Json;
using FieldSession.Planning;
using FieldSession.State;

namespace FieldSession;

/// <summary>A plan in one hash, so that codes drawn for a plan are not taken into a study of another one.</summary>
public static class PlanDigest
{
    /// <summary>SHA-256 (FIPS 180-4) of the plan as the journal writes it, 64 hex digits.</summary>
    public static string Of(Plan plan) =>
        Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(new PlanMade(plan), EntryShapes.Default.PlanMade)));
}
