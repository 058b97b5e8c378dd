using System.Collections.Immutable;
using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads what the plan says of tyres and checks: size, cold pressures, the checks it asks for, and which readings count.</summary>
internal static class PlanTyres
{
    private const double MostKpa = 1000;

    /// <summary>The plan with these words.</summary>
    public static Plan With(Plan plan, PlanWords words, Troubles troubles) =>
        plan with
        {
            TyreSize = SizeOf(words, troubles),
            PressureFrontKpa = PressureOf(words, "pressure_front", troubles),
            PressureRearKpa = PressureOf(words, "pressure_rear", troubles),
            RequiredChecks = RequiredOf(words, troubles),
            RerunRule = RuleOf(words, troubles),
            AbortRule = AbortRuleOf(words, troubles),
            FilledLeftOut = words.YesNo("filled_counts", troubles) is { } counts ? !counts : null,
        };

    private static string? SizeOf(PlanWords words, Troubles troubles)
    {
        string? text = words.Text("tyre_size", 40, troubles);
        if (text is not null && TyreSize.Parse(text, out Objection? objection) is null)
        {
            words.Find("tyre_size")!.Refuse(troubles, $"'tyre_size' is {Troubles.Quoted(text)}: {objection!.Why}", objection.Instead);
        }

        return text;
    }

    private static double? PressureOf(PlanWords words, string name, Troubles troubles)
    {
        double? kpa = words.Number($"{name}_kpa", 50, MostKpa, troubles);
        double? psi = words.Number($"{name}_psi", 7, MostKpa / TyrePressure.KpaPerPsi, troubles);
        if (kpa is not null && psi is not null)
        {
            words.Find($"{name}_psi")!.Refuse(troubles, PlanFolderWords.PressureIsThereTwice(name), PlanFolderWords.WriteOneOfThem);
        }

        return kpa ?? (psi is { } pounds ? TyrePressure.FromPsi(pounds).Kpa : null);
    }

    private static ImmutableList<string>? RequiredOf(PlanWords words, Troubles troubles)
    {
        string[] known = [.. CheckKinds.All.Select(kind => kind.Name)];
        ImmutableList<string>? required = words
            .Texts("required_checks", known.Length, 40, troubles)
            ?.Select(name => name.ToLowerInvariant())
            .ToImmutableList();
        if (required?.FirstOrDefault(name => !known.Contains(name)) is { } unknown)
        {
            words
                .Find("required_checks")!
                .Refuse(
                    troubles,
                    $"'required_checks' names {Troubles.Quoted(unknown)}",
                    PlanFolderWords.ChecksAre(string.Join(", ", known))
                );
        }

        return required;
    }

    private static AbortRule? AbortRuleOf(PlanWords words, Troubles troubles)
    {
        string? word = words.Text("aborted_counts", 20, troubles)?.ToLowerInvariant();
        if (word is not (null or "repeat" or "both" or "no"))
        {
            words
                .Find("aborted_counts")!
                .Refuse(troubles, $"'aborted_counts' is {Troubles.Quoted(word)}", PlanFolderWords.AbortedCountsForm);
        }

        return word switch
        {
            "both" => AbortRule.Both,
            "no" => AbortRule.Neither,
            "repeat" => AbortRule.Repeat,
            _ => null,
        };
    }

    private static RerunRule? RuleOf(PlanWords words, Troubles troubles)
    {
        string? word = words.Text("rerun_counts", 20, troubles)?.ToLowerInvariant();
        if (word is not (null or "rerun" or "first" or "both"))
        {
            words.Find("rerun_counts")!.Refuse(troubles, $"'rerun_counts' is {Troubles.Quoted(word)}", PlanFolderWords.RerunCountsForm);
        }

        return word switch
        {
            "first" => RerunRule.First,
            "both" => RerunRule.Both,
            "rerun" => RerunRule.Rerun,
            _ => null,
        };
    }
}
