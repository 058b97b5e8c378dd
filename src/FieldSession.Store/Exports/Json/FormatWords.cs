using FieldSession.Comparing;
using FieldSession.Reporting;

namespace FieldSession.Store.Exports;

/// <summary>Values of the comparison JSON that programs read (docs/files.md): they are part of the format and are not translated.</summary>
internal static class FormatWords
{
    public const string SpoiltPutBack = "spoilt put back";
    public const string RunLeftOut = "run left out";
    public const string SegmentLeftOut = "segment left out";
    public const string DriftSwitched = "drift switched";
    public const string Readings = "readings";
    public const string Run = "run";
    public const string Segment = "segment";

    public static string Rule(FamilyRule rule) =>
        rule switch
        {
            FamilyRule.Dunnett => "dunnett",
            FamilyRule.Holm => "holm",
            _ => "alone",
        };

    public static string Line(VerdictLineKind line) =>
        line switch
        {
            VerdictLineKind.Meter => "meter",
            VerdictLineKind.Ring => "ring",
            VerdictLineKind.Ear => "ear",
            _ => "worth",
        };

    /// <summary>What the checks of the key found.</summary>
    public static string KeyCheck(KeyCheckResult result) =>
        result switch
        {
            KeyCheckResult.Holds => "holds",
            KeyCheckResult.Failed => "failed",
            _ => "not open",
        };
}
