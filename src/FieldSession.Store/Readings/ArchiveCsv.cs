using FieldSession.Comparing;
using FieldSession.Store.Disks;

namespace FieldSession.Store.Readings;

/// <summary>
/// Reads the repeatability of earlier days: one line a day and class with the columns day, cls (all, steady, impact), S, nu_run, s_run, kbar, nu_e,
/// s_e, which are the outputs of that day's own comparison. A standard deviation without degrees of freedom is empty or NA.
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

    /// <summary>Reads a file.</summary>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static FileRead<IReadOnlyList<ArchiveLine>> Read(string path)
    {
        FileStream stream = FileKind.OpenToRead(path);
        return Read(stream, path);
    }

    /// <summary>Reads a stream, which is closed then.</summary>
    /// <param name="stream">The bytes of the file.</param>
    /// <param name="name">The file's name for the problems.</param>
    public static FileRead<IReadOnlyList<ArchiveLine>> Read(Stream stream, string name)
    {
        FileProblems problems = new(name);
        string[] names = ["day", "cls", "nu_run", "s_run", "kbar", "nu_e", "s_e"];
        using CsvSheet sheet = new(stream, problems, names);
        List<ArchiveLine> lines = [];
        if (sheet.ReadHeader(names.Length))
        {
            HashSet<(string Day, MeasureClass? Class)> seen = [];
            while (sheet.ReadRow())
            {
                Take(sheet, seen, lines);
            }

            if (lines.Count == 0 && !problems.Any)
            {
                problems.Add(ReadingsFileWords.NoDay, ReadingsFileWords.OneLineADayAndClass);
            }
        }

        return problems.Any
            ? new FileRead<IReadOnlyList<ArchiveLine>>(null, problems.InWords, problems.More)
            : new FileRead<IReadOnlyList<ArchiveLine>>(lines, [], 0);
    }

    private static void Take(CsvSheet sheet, HashSet<(string Day, MeasureClass? Class)> seen, List<ArchiveLine> lines)
    {
        string day = sheet[Day];
        string word = sheet[Class].ToLowerInvariant();
        MeasureClass? measureClass = word switch
        {
            "steady" => MeasureClass.Steady,
            "impact" => MeasureClass.Impact,
            _ => null,
        };
        if (measureClass is null && word != "all")
        {
            sheet.Problem(Class, sheet[Class], "no class", ReadingsFileWords.ArchiveClassForm);
        }
        else if (day.Length == 0)
        {
            sheet.Problem(Day, day, "no day", ReadingsFileWords.DayForm);
        }
        else if (!seen.Add((day, measureClass)))
        {
            sheet.Problem(Day, day, ReadingsFileWords.DayIsThereTwice(word), ReadingsFileWords.OneLineADayAndClass);
        }
        else if (Line(sheet, day, measureClass) is { } line)
        {
            lines.Add(line);
        }
    }

    private static ArchiveLine? Line(CsvSheet sheet, string day, MeasureClass? measureClass)
    {
        double? nuRun = Size(sheet, NuRun, 0);
        double? sRun = Size(sheet, SRun, nuRun);
        double? kbar = Size(sheet, Kbar, 0);
        double? nuE = Size(sheet, NuE, 0);
        double? sE = Size(sheet, SE, nuE);
        bool good = nuRun is not null && kbar is not null && nuE is not null
            && !(nuRun > 0 && sRun is null) && !(nuE > 0 && sE is null);
        return good ? new ArchiveLine(day, measureClass, nuRun!.Value, sRun, kbar!.Value, nuE!.Value, sE) : null;
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
            column is SRun or SE ? ReadingsFileWords.DeviationForm : ReadingsFileWords.NumberForm);
        return null;
    }
}
