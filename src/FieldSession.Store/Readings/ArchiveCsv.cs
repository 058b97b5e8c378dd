using FieldSession.Archiving;
using FieldSession.State;
using FieldSession.Store.Disks;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Readings;

/// <summary>
/// Reads the repeatability of earlier days: one line a day and class with the columns day, cls (all, steady, impact, ring), nu_run, s_run,
/// kbar, nu_e, s_e, which are the outputs of that day's own comparison. A standard deviation without degrees of freedom is empty or NA. The
/// columns study (hash of the study's first line), crew and loop may be there: a study enters once, and a plan takes the days of its own
/// crew and loop.
/// </summary>
public static class ArchiveCsv
{
    private const int Day = 0;
    private const int Class = 1;
    private const int NuRun = 2;
    private const int SRun = 3;
    private const int Kbar = 4;
    private const int NuE = 5;
    private const int SE = 6;

    private const int Study = 7;
    private const int Crew = 8;
    private const int Loop = 9;
    private const int Required = 7;

    /// <summary>Reads a file.</summary>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static FileRead<IReadOnlyList<ArchiveRow>> Read(string path)
    {
        FileStream stream = FileKind.OpenToRead(path);
        return Read(stream, path);
    }

    /// <summary>Reads a stream, which is closed then.</summary>
    /// <param name="stream">The bytes of the file.</param>
    /// <param name="name">The file's name for the problems.</param>
    public static FileRead<IReadOnlyList<ArchiveRow>> Read(Stream stream, string name)
    {
        FileProblems problems = new(name);
        string[] names = ["day", "cls", "nu_run", "s_run", "kbar", "nu_e", "s_e", "study", "crew", "loop"];
        using CsvSheet sheet = new(stream, problems, names);
        List<ArchiveRow> rows = [];
        if (sheet.ReadHeader(Required))
        {
            HashSet<(string Day, string Group)> seen = [];
            while (sheet.ReadRow())
            {
                Take(sheet, seen, rows);
            }

            if (rows.Count == 0 && !problems.Any)
            {
                problems.Add(ReadingsFileWords.NoDay, ReadingsFileWords.OneLineADayAndClass);
            }
        }

        return problems.Any
            ? new FileRead<IReadOnlyList<ArchiveRow>>(null, problems.InWords, problems.More)
            : new FileRead<IReadOnlyList<ArchiveRow>>(rows, [], 0);
    }

    private static void Take(CsvSheet sheet, HashSet<(string Day, string Group)> seen, List<ArchiveRow> rows)
    {
        string day = SpreadsheetText.Plain(sheet[Day]);
        string group = sheet[Class].ToLowerInvariant();
        string? study = Told(sheet, Study);
        if (!IsNamed(sheet, day, group, study))
        {
            return;
        }

        if (!seen.Add((study ?? day, group)))
        {
            sheet.Problem(
                study is null ? Day : Study,
                study ?? day,
                ReadingsFileWords.DayIsThereTwice(group),
                ReadingsFileWords.OneLineADayAndClass
            );
        }
        else if (Scatter(sheet, day, group, study) is { } scatter)
        {
            rows.Add(new ArchiveRow(scatter, Told(sheet, Crew), Told(sheet, Loop)));
        }
    }

    private static bool IsNamed(CsvSheet sheet, string day, string group, string? study)
    {
        (int Column, string What, string Allowed)? problem =
            group is not ("all" or "steady" or "impact" or EarlierScatter.Ring) ? (Class, "no class", ReadingsFileWords.ArchiveClassForm)
            : day.Length == 0 ? (Day, "no day", ReadingsFileWords.DayForm)
            : study is not null && StudyIdentity.WithHash(study) is null ? (Study, "no study", ReadingsFileWords.IdentityForm)
            : null;
        if (problem is { } wrong)
        {
            sheet.Problem(wrong.Column, sheet[wrong.Column], wrong.What, wrong.Allowed);
        }

        return problem is null;
    }

    private static string? Told(CsvSheet sheet, int column) => sheet[column] is { Length: > 0 } text ? SpreadsheetText.Plain(text) : null;

    private static EarlierScatter? Scatter(CsvSheet sheet, string day, string group, string? study)
    {
        double? nuRun = Size(sheet, NuRun, 0);
        double? sRun = Size(sheet, SRun, nuRun);
        double? kbar = Size(sheet, Kbar, 0);
        double? nuE = Size(sheet, NuE, 0);
        double? sE = Size(sheet, SE, nuE);
        bool good = nuRun is not null && kbar is not null && nuE is not null && !(nuRun > 0 && sRun is null) && !(nuE > 0 && sE is null);
        return good ? new EarlierScatter(day, group, nuRun!.Value, sRun, kbar!.Value, nuE!.Value, sE, study) : null;
    }

    /// <summary>A number from 0; a standard deviation without degrees of freedom may be unknown.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="column">The column.</param>
    /// <param name="df">Degrees of freedom behind the number; 0 of a standard deviation: it is unknown.</param>
    private static double? Size(CsvSheet sheet, int column, double? df)
    {
        string text = sheet[column];
        bool isUnknown = text.Length == 0 || text.Equals("NA", StringComparison.OrdinalIgnoreCase);
        bool mayBeUnknown = column is SRun or SE && df is null or 0;
        if (isUnknown && mayBeUnknown)
        {
            return null;
        }

        double? number = CsvNumbers.Number(text);
        if (number is >= 0)
        {
            return number;
        }

        sheet.Problem(
            column,
            text,
            number is null ? CsvNumbers.WhatIsWrong(text) : "below 0",
            column is SRun or SE ? ReadingsFileWords.DeviationForm : ReadingsFileWords.NumberForm
        );
        return null;
    }
}
