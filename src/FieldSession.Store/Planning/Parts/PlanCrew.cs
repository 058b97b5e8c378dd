using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads who rides: a list of names, the first drives and the second types, or tables of name and seat.</summary>
internal static class PlanCrew
{
    private const int Most = 9;
    private const int LongestName = 60;

    // a single [crew] instead of [[crew]]: one person rides
    private const string OneTable = "crew.";

    /// <summary>The crew; empty where the plan names none.</summary>
    public static ImmutableList<CrewMember> Of(PlanWords words, Troubles troubles)
    {
        List<CrewMember> crew = [];
        foreach ((IReadOnlyList<PlanWord> member, int line) in Members(words, troubles))
        {
            string? name = Part(member, "name", troubles);
            if (name is null)
            {
                RefuseNameless(member, line, troubles);
                continue;
            }

            if (crew.Any(other => string.Equals(other.Name, name, StringComparison.OrdinalIgnoreCase)))
            {
                troubles.Refuse(PlanFile.Plan, line, null, PlanFolderWords.CrewNamesTwice(name), PlanFolderWords.GiveEachPersonOwnName);
            }

            if (name.Contains(',', StringComparison.Ordinal))
            {
                troubles.Refuse(PlanFile.Plan, line, null, PlanFolderWords.NameHoldsComma(name), PlanFolderWords.WritePeopleApart(name));
            }

            crew.Add(new CrewMember(name, Part(member, "seat", troubles) ?? SeatAt(crew.Count)));
        }

        return [.. crew];
    }

    /// <summary>The custodian, who may not ride; null where the plan names none.</summary>
    public static string? CustodianOf(PlanWords words, ImmutableList<CrewMember> crew, Troubles troubles)
    {
        string? custodian = words.Text("custodian", LongestName, troubles);
        if (custodian is not null && crew.Any(member => string.Equals(member.Name, custodian, StringComparison.OrdinalIgnoreCase)))
        {
            words.Find("custodian")?.Refuse(troubles, PlanFolderWords.CustodianIsInCrew(custodian), PlanFolderWords.CustodianDoesNotRide);
        }

        return custodian;
    }

    private static IEnumerable<(IReadOnlyList<PlanWord> Member, int Line)> Members(PlanWords words, Troubles troubles)
    {
        List<(IReadOnlyList<PlanWord> Member, int Line)> members =
        [
            .. words.Repeated.Where(table => table.Name == "crew").Select(table => (table.Words, table.Line)),
        ];
        PlanWord[] alone = [.. words.Words.Where(word => word.Name.StartsWith(OneTable, StringComparison.Ordinal))];
        if (alone.Length > 0)
        {
            members.Add(([.. alone.Select(word => word with { Name = word.Name[OneTable.Length..] })], alone[0].Line));
        }

        if (words.Find("crew") is { } crew)
        {
            if (crew.Items is null)
            {
                crew.Refuse(troubles, $"'crew' is {crew.Sort}", PlanFolderWords.CrewForm);
            }

            members.AddRange((crew.Items ?? []).Select(item => (item.Members ?? [item with { Name = "name" }], item.Line)));
        }

        if (members.Count > Most)
        {
            troubles.Refuse(
                PlanFile.Plan,
                members[Most].Line,
                null,
                $"'crew' names {members.Count}",
                PlanFolderWords.AtMostPeopleRide(Most)
            );
        }

        return members.Take(Most);
    }

    private static void RefuseNameless(IReadOnlyList<PlanWord> member, int line, Troubles troubles)
    {
        if (!member.Any(word => word.Name == "name"))
        {
            troubles.Refuse(PlanFile.Plan, line, null, PlanFolderWords.PersonHasNoName, PlanFolderWords.PersonForm);
        }
    }

    private static string? Part(IReadOnlyList<PlanWord> member, string name, Troubles troubles) =>
        member.FirstOrDefault(word => word.Name == name) is { } word ? PlanWords.TextOf(word, LongestName, troubles) : null;

    private static string SeatAt(int index) =>
        index switch
        {
            0 => CrewMember.DriverSeat,
            1 => CrewMember.CoDriverSeat,
            _ => "passenger",
        };
}
