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
/// Reads a legs CSV, one leg of an energy day a row: RFC 4180, UTF-8, a header, columns by name. Nothing is taken from a file with anything wrong
/// in it. Columns: docs/files.md.
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
                sheet.Problem(column, text, wrong is null ? CsvNumbers.WhatIsWrong(text) : ReadingsFileWords.NotToBeRead, LegParts.Named(part.Part)!.Allowed);
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
            sheet.Problem(LegColumns.ChargeStart, $"{start} to {end}", ReadingsFileWords.NoStateOfCharge, ReadingsFileWords.StateOfChargeForm);
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

    private static string Typed(CsvSheet sheet) => string.Join(' ', LegColumns.Names.Index()
        .Where(column => sheet[column.Index].Length > 0)
        .Select(column => $"{column.Item}={sheet[column.Index]}"));
}
