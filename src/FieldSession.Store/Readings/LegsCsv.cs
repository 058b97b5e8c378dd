using System.Collections.Immutable;
using FieldSession.EnergyDriving;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Store.Disks;

namespace FieldSession.Store.Readings;

/// <summary>A row of a legs CSV as the fact it means.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="Leg">The fact.</param>
public sealed record LegRow(long Line, EnergyLegDriven Leg);

/// <summary>
/// Reads a legs CSV, one leg of an energy day a row: RFC 4180, UTF-8, a header, columns by name. Nothing is taken from a file with anything
/// wrong in it. Columns: docs/files.md.
/// </summary>
public static class LegsCsv
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="plan">The study's plan, for the usable capacity; null: none.</param>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static FileRead<IReadOnlyList<LegRow>> Read(string path, Plan? plan)
    {
        // shared, so that a file that is open in a spreadsheet can be read
        FileStream stream = FileKind.OpenToRead(path);
        return Read(stream, path, plan);
    }

    /// <summary>Reads a stream, which is closed then.</summary>
    /// <param name="stream">The bytes of the file.</param>
    /// <param name="name">The file's name for the problems.</param>
    /// <param name="plan">The study's plan; null: none.</param>
    public static FileRead<IReadOnlyList<LegRow>> Read(Stream stream, string name, Plan? plan)
    {
        FileProblems problems = new(name);
        using CsvSheet sheet = new(stream, problems, LegColumns.Names);
        List<LegRow> rows = [];
        if (sheet.ReadHeader(LegColumns.Required))
        {
            while (sheet.ReadRow())
            {
                if (Row(sheet, problems, plan) is { } row)
                {
                    rows.Add(row);
                }
            }

            if (rows.Count == 0 && !problems.Any)
            {
                problems.Add(ReadingsFileWords.NoLeg, ReadingsFileWords.OneLegALine);
            }
        }

        return problems.Any
            ? new FileRead<IReadOnlyList<LegRow>>(null, problems.InWords, problems.More)
            : new FileRead<IReadOnlyList<LegRow>>(rows, [], 0);
    }

    private static LegRow? Row(CsvSheet sheet, FileProblems problems, Plan? plan)
    {
        if (Parts(sheet) is not { } draft || WithCharge(sheet, draft) is not { } whole)
        {
            return null;
        }

        if (SpoiltText.Read(sheet[LegColumns.Spoilt]) is not { } spoilt)
        {
            sheet.Problem(LegColumns.Spoilt, sheet[LegColumns.Spoilt], ReadingsFileWords.MeaningIsUnclear, SpoiltText.Allowed);
            return null;
        }

        if (LegMaking.Of(whole, plan, Typed(sheet), out Objection? objection) is not { } figures)
        {
            problems.Add(sheet.Line, null, null, objection!.Why, objection.Instead);
            return null;
        }

        (SpoiltCause? cause, string? words) = CauseOf(spoilt, sheet[LegColumns.Note]);
        return new LegRow(sheet.Line, new EnergyLegDriven(figures, cause, words));
    }

    private static LegDraft? Parts(CsvSheet sheet)
    {
        LegDraft draft = LegDraft.Empty;
        bool isGood = true;
        for (int column = 0; column < LegColumns.Parts.Length; column++)
        {
            string text = sheet[column];
            LegColumn part = LegColumns.Parts[column];
            if (text.Length == 0)
            {
                continue;
            }

            (draft, string? wrong) = LegParts.With(draft, LegParts.Named(part.Part)!, text, part.Units);
            if (wrong is not null || (part.Part is not ("car" or "driver") && text.Contains(',', StringComparison.Ordinal)))
            {
                sheet.Problem(
                    column,
                    text,
                    wrong is null ? CsvNumbers.WhatIsWrong(text) : ReadingsFileWords.NotToBeRead,
                    LegParts.Named(part.Part)!.Allowed
                );
                isGood = false;
            }
        }

        return isGood ? draft : null;
    }

    private static LegDraft? WithCharge(CsvSheet sheet, LegDraft draft)
    {
        (string start, string end) = (sheet[LegColumns.ChargeStart], sheet[LegColumns.ChargeEnd]);
        if (start.Length == 0 && end.Length == 0)
        {
            return draft;
        }

        LegPart part = LegParts.Named("soc")!;
        (LegDraft charged, string? wrong) = LegParts.With(draft, part, $"{start}-{end}", UnitSystem.Metric);
        if (wrong is not null)
        {
            sheet.Problem(
                LegColumns.ChargeStart,
                $"{start} to {end}",
                ReadingsFileWords.NoStateOfCharge,
                ReadingsFileWords.StateOfChargeForm
            );
        }

        return wrong is null ? charged : null;
    }

    private static (SpoiltCause? Cause, string? Words) CauseOf(SpoiltText spoilt, string note)
    {
        if (!spoilt.IsSpoilt)
        {
            return (null, null);
        }

        string? said = note.Length > 0 ? note : null;
        foreach ((SpoiltCause cause, _, string word, _) in SpoiltCauses.All)
        {
            if (word == spoilt.Cause)
            {
                return (cause, said);
            }
        }

        return (SpoiltCause.EntryDoubt, said ?? spoilt.Cause ?? ReadingsFileWords.CauseNotSaid);
    }

    private static string Typed(CsvSheet sheet) =>
        string.Join(
            ' ',
            LegColumns
                .Names.Index()
                .Where(column => sheet[column.Index].Length > 0)
                .Select(column => $"{column.Item}={sheet[column.Index]}")
        );
}

/// <summary>A column of a legs CSV that holds one part of a leg.</summary>
/// <param name="Name">Its name in the header.</param>
/// <param name="Part">The part of a leg, by its name in an entry line.</param>
/// <param name="Units">The units of its values, where the part follows the plan's units in an entry line.</param>
internal sealed record LegColumn(string Name, string Part, UnitSystem Units = UnitSystem.Metric);

/// <summary>The columns of a legs CSV. An export writes the same, so that legs come in as they go out.</summary>
internal static class LegColumns
{
    /// <summary>How many of the names have to be in the header: the first ones.</summary>
    public const int Required = 3;

    /// <summary>The columns that hold one part each.</summary>
    public static ImmutableArray<LegColumn> Parts { get; } =
    [
        new("day", "day"),
        new("car", "car"),
        new("code", "code"),
        new("driver", "driver"),
        new("distance_km", "km"),
        new("distance_mi", "mi"),
        new("energy_kwh", "kwh"),
        new("fuel_l", "l"),
        new("fuel_us_gal", "gal"),
        new("fuel_imp_gal", "impgal"),
        new("energy_step", "read"),
        new("soc_step_percent", "step"),
        new("usable_kwh", "usable"),
        new("tank_l", "tank"),
        new("air_start_c", "t0"),
        new("air_start_f", "t0", UnitSystem.Imperial),
        new("air_end_c", "t1"),
        new("air_end_f", "t1", UnitSystem.Imperial),
        new("wind_m_s", "wind"),
        new("wind_mph", "wind", UnitSystem.Imperial),
        new("speed_kmh", "kmh"),
        new("speed_mph", "mph"),
        new("start", "at"),
        new("minutes", "min"),
    ];

    /// <summary>Place of the column with the state of charge at the start.</summary>
    public static int ChargeStart => Parts.Length;

    /// <summary>Place of the column with the state of charge at the end.</summary>
    public static int ChargeEnd => Parts.Length + 1;

    /// <summary>Place of the column that says what spoilt the leg.</summary>
    public static int Spoilt => Parts.Length + 2;

    /// <summary>Place of the column with words about it.</summary>
    public static int Note => Parts.Length + 3;

    /// <summary>Every name, in the order of the places.</summary>
    public static ImmutableArray<string> Names { get; } =
    [.. Parts.Select(column => column.Name), "soc_start_percent", "soc_end_percent", "spoilt", "note"];
}
