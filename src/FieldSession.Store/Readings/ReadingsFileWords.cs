using FieldSession.Comparing;

namespace FieldSession.Store.Readings;

/// <summary>What is wrong in a file of readings, legs or earlier days, and what to do.</summary>
internal static class ReadingsFileWords
{
    // the sheet
    public const string FileIsEmpty = "the file is empty";

    public static string HeaderIsNeeded(string names) => $"a header is needed: {names}";

    public const string ColumnIsThereTwice = "the header names this column twice";
    public const string NameColumnOnce = "name it once";
    public const string ColumnIsMissing = "the column is missing";
    public const string SeparateByCommas = "separate the columns by commas, and write numbers with a point";

    public static string HeaderForm(string names) => $"the header names the columns: {names}";

    public static string RowIsRagged(int values, int columns) => $"{values} values, but the header names {columns} columns";

    public const string QuoteValueWithComma = "quote a value that has a comma in it; leave empty what is unknown";
    public const string HeaderIsRepeated = "the header is here a second time";
    public const string TakeLineOut = "remove this line";
    public const string QuoteIsNeverClosed = "a quote is opened here and never closed";
    public const string CloseQuote = "close it with \"";
    public const string TextBehindClosingQuote = "text after a closing quote";
    public const string QuoteInMiddleOfValue = "a quote in the middle of a value";
    public const string QuoteWholeValue = "quote the whole value, and write a quote inside it as \"\"";
    public const string NulByte = "a NUL byte: this is not text";
    public const string NoUtf8 = "bytes that are not UTF-8";
    public const string SaveAsCsv = "save the file as CSV in UTF-8";

    // the size of the sheet
    public static string TooManyRows => $"more than {CsvLimits.Rows} rows";

    public const string SplitFile = "split the file";

    public static string FileIsTooLarge => $"the file is larger than {CsvLimits.Bytes >> 20} MiB";

    public const string LineOrQuotedTextIsTooLong = "a line, or a quoted text, of more than 1 MiB";
    public const string OneReadingALineClosedQuotes = "write one reading a line, and close every quote";
    public const string LineIsTooLong = "a line of more than 1 MiB";
    public const string OneReadingALine = "write one reading a line";

    public static string AtMostColumnsAreRead => $"at most {CsvLimits.Columns} are read";

    // numbers
    public const string NumberWithComma = "a number with a comma";
    public const string NoWholeNumber = "no whole number from 1";
    public const string OutOfRange = "out of range";
    public const string NumberForm = "a number from 0, with a point";
    public const string DeviationForm = "a number from 0, with a point; NA where its degrees of freedom are 0";

    // earlier days
    public const string NoDay = "no day below the header";
    public const string OneLineADayAndClass = "one line a day and class";
    public const string ArchiveClassForm = "all, steady, impact or ring";
    public const string IdentityForm =
        "the hash of a study's first line, 64 hex digits, as 'archive FOLDER --csv' writes it; or leave it empty";
    public const string DayForm = "a name or number for the day";

    public static string DayIsThereTwice(string measureClass) => $"this day has a line for {measureClass} already";

    // legs
    public const string NoLeg = "no leg below the header";
    public const string OneLegALine = "one leg a line";
    public const string MeaningIsUnclear = "this has no clear meaning";
    public const string NotToBeRead = "not readable";
    public const string NoStateOfCharge = "no state of charge at start and end";
    public const string StateOfChargeForm = "two numbers 0 to 100";
    public const string CauseNotSaid = "cause not said";

    // a reading
    public const string NoReading = "no reading below the header";
    public const string OneReadingBelowHeader = "one reading a line";

    public static string EveryReadingHas(int column) => $"every reading has a {ReadingColumns.Names[column]}";

    public static string NameForm => $"at most {CsvLimits.NameLength} characters, none of them a control character";

    public const string RunForm = "runs are numbered 1, 2, 3 in driven order";
    public const string OrderRunsForm = "give growing whole numbers of runs, such as 6 or 6 8";
    public const string MinutesForm = "minutes from the first start to the middle of this run, 0 to 100000000; or empty";
    public const string SecondsForm = "seconds on the segment, above 0 and up to 1000000000, with a point; or empty";
    public const string ImpactIsReadAsPeak = "the kind impact is read as a peak";
    public const string ClassForm = "steady, impact, or empty: then the kind says it";
    public const string LevelForm = "a level in dB from 0 to 140, with a point";
    public const string NoLevelOfMeter = "not a level that a meter shows";
    public const string LowWithoutHigh = "low is given without high";
    public const string OneValueGoesInHigh = "one value goes in high; a missed reading has neither";

    public static string LowIsAboveHigh(string high) => $"low is above high ({high})";

    public const string WriteLowerValueInLow = "write the lower value in low, the higher in high";
    public const string UnclearWhetherItCounts = "unclear whether the reading counts";
    public const string SpoiltForm = "empty, 0 or no; or 1, y, yes, a cause (t w s r n e), or words";

    // rows that do not agree
    public static string RunDiffers(int run, string saidBefore, long line) => $"run {run} has {saidBefore} here on line {line}";

    public static string KindDiffers(PlannedSegment said, string firstKind, long firstLine) =>
        $"segment {FileProblem.Shown(said.Segment)} has the kind {FileProblem.Shown(firstKind)} on line {firstLine}";

    public const string OneKindASegment = "one kind a segment";

    public static string ClassDiffers(PlannedSegment said, string firstClass, long firstLine) =>
        $"segment {FileProblem.Shown(said.Segment)} is {firstClass} on line {firstLine}";

    public const string OneClassASegment = "one class a segment";

    public static string DurationDiffers(PlannedSegment said, string firstSeconds, long firstLine) =>
        $"segment {FileProblem.Shown(said.Segment)} has '{firstSeconds}' here on line {firstLine}";

    public const string OneDurationASegment = "one duration a segment";

    // the size of the day
    public static string TooManyRunsSideBySide(int runs) => $"{runs} runs, some of them side by side (same slot, or same minutes)";

    public static string GiveEachRunOwnTime => $"at most {CsvLimits.RunsSideBySide} then; give every run its own time, or split the file";

    public static string RunsTimesSegments => $"{CsvLimits.Cells} runs times segments";

    public static string RunsTimesColumns => $"{CsvLimits.RunColumns} runs times codes, cars and sessions";

    public static string CodesTimesSegments => $"{CsvLimits.CodeSegments} codes times segments";

    public const string SplitOrLookAtColumns = "split the file, or check whether a column holds something else";

    public static string IsThisTheColumn(string things) => $"does this column hold the {things}?";
}
