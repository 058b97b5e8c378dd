using FieldSession.Comparing;

namespace FieldSession.Store.Readings;

/// <summary>What is wrong in a file of readings, legs or earlier days, and what to do.</summary>
internal static class ReadingsFileWords
{
    public const string NoDayBelowHeader = "no day below the header";
    public const string OneLineDayAndClass = "one line a day and class";
    public const string AllSteadyOrImpact = "all, steady or impact";
    public const string NameOrNumberForDay = "a name or number for the day";
    public const string NumberFromWithPointNaWhereItsDegrees = "a number from 0, with a point; NA where its degrees of freedom are 0";
    public const string NumberFromWithPoint = "a number from 0, with a point";
    public const string NumberWithComma = "a number with a comma";
    public const string FileIsEmpty = "the file is empty";
    public const string SplitFile = "split the file";
    public const string LineOrQuotedTextOfMoreThanMib = "a line, or a quoted text, of more than 1 MiB";
    public const string WriteOneReadingLine = "write one reading a line, and close every quote";
    public const string QuoteIsOpenedHereAndNeverClosed = "a quote is opened here and never closed";
    public const string CloseItWith = "close it with \"";
    public const string TextBehindClosingQuote = "text behind a closing quote";
    public const string QuoteWholeValue = "quote the whole value, and write a quote inside it as \"\"";
    public const string QuoteInMiddleOfValue = "a quote in the middle of a value";
    public const string LineOfMoreThanMib = "a line of more than 1 MiB";
    public const string WriteOneReadingLine2 = "write one reading a line";
    public const string NulByteThisIsNoText = "a NUL byte: this is no text";
    public const string SaveFileAsCsvIn = "save the file as CSV in UTF-8";
    public const string BytesThatAreNo = "bytes that are no UTF-8";
    public const string HeaderNamesThisColumnTwice = "the header names this column twice";
    public const string NameItOnce = "name it once";
    public const string ColumnIsMissing = "the column is missing";
    public const string SeparateColumnsByCommas = "separate the columns by commas, and write numbers with a point";
    public const string QuoteValueThatHasCommaInItLeave = "quote a value that has a comma in it; leave empty what is unknown";
    public const string HeaderStandsHereAgain = "the header stands here again";
    public const string TakeThisLineOut = "take this line out";
    public const string NoLegBelowHeader = "no leg below the header";
    public const string OneLegLine = "one leg a line";
    public const string ItCantBeToldWhatThisMeans = "it can't be told what this means";
    public const string NotToBeRead = "not to be read";
    public const string NoStateOfChargeAtStartAndEnd = "no state of charge at start and end";
    public const string TwoNumbersTo = "two numbers 0 to 100";
    public const string CauseNotSaid = "cause not said";
    public const string LevelInDbFromToWithPoint = "a level in dB from 0 to 140, with a point";
    public const string MinutesFromFirstRunsStartToMiddleOfThis = "minutes from the first run's start to the middle of this run, 0 to 100000000, with a point; or empty";
    public const string SecondsThatRunStaysOnSegment = "seconds that a run stays on the segment, above 0 and up to 1000000000, with a point; or empty";
    public const string NoWholeNumberFrom = "no whole number from 1";
    public const string RunsAreNumbered = "runs are numbered 1, 2, 3 in driven order";
    public const string KindImpactIsReadAsPeak = "the kind impact is read as a peak";
    public const string SteadyImpactOrEmptyThenKind = "steady, impact, or empty: then the kind says it";
    public const string OutOfRange = "out of range";
    public const string LowStandsWithoutHigh = "low stands without high";
    public const string OneValueStandsInHigh = "one value stands in high; a missed reading has neither";
    public const string WriteLowerValueInLow = "write the lower value in low, the higher in high";
    public const string NoLevelThatMeterShows = "no level that a meter shows";
    public const string UnclearWhetherReadingCounts = "unclear whether the reading counts";
    public const string NoReadingBelowHeader = "no reading below the header";
    public const string OneReadingLine = "one reading a line";
    public const string OneKindSegment = "one kind a segment";
    public const string OneClassSegment = "one class a segment";
    public const string OneDurationSegment = "one duration a segment";
    public const string SplitFileOrLookWhetherColumn = "split the file, or look whether a column holds something else";
    public const string EmptyOrNoOrYesCause = "empty, 0 or no; or 1, y, yes, a cause (t w s r n e), or words";

    public static string ThisDayHasLineForAlready(string word) => $"this day has a line for {word} already";

    public static string HeaderIsNeeded(string names) => $"a header is needed: {names}";

    public static string MoreThanRows => $"more than {CsvLimits.Rows} rows";

    public static string FileIsLargerThanMib => $"the file is larger than {CsvLimits.Bytes >> 20} MiB";

    public static string AtMostAreRead => $"at most {CsvLimits.Columns} are read";

    public static string HeaderNamesColumns(string names) => $"the header names the columns: {names}";

    public static string ValuesButHeaderNamesColumns(int fieldCount, int headerCount) => $"{fieldCount} values, but the header names {headerCount} columns";

    public static string LowIsAboveHigh(CsvSheet sheet) => $"low is above high ({sheet[ReadingColumns.High]})";

    public static string EveryReadingHas(int column) => $"every reading has a {ReadingColumns.Names[column]}";

    public static string AtMostCharacters => $"at most {CsvLimits.NameLength} characters, none of them a control character";

    public static string RunsSomeOfThemSideBySide(ReadingRows rows) => $"{rows.RunsSideBySide} runs, some of them side by side (same slot, or same minutes)";

    public static string AtMostThenGive => $"at most {CsvLimits.RunsSideBySide} then; give every run its own time, or split the file";

    public static string SegmentHasKindOnLine(PlannedSegment said, SegmentSoFar first) => $"segment {FileProblem.Shown(said.Segment)} has the kind {FileProblem.Shown(first.Segment.Kind)} on line {first.Line}";

    public static string SegmentIsOnLine(PlannedSegment said, string word, SegmentSoFar first) => $"segment {FileProblem.Shown(said.Segment)} is {word} on line {first.Line}";

    public static string SegmentHasHereOnLine(PlannedSegment said, SegmentSoFar first) => $"segment {FileProblem.Shown(said.Segment)} has '{first.Segment.Seconds}' here on line {first.Line}";

    public static string RunsTimesSegments => $"{CsvLimits.Cells} runs times segments";

    public static string RunsTimesCodes => $"{CsvLimits.RunColumns} runs times codes, cars and sessions";

    public static string CodesTimesSegments => $"{CsvLimits.CodeSegments} codes times segments";

    public static string IsThisColumnOf(string things) => $"is this the column of the {things}?";

    public static string RunHasHereOnLine(int run, string before, long line) => $"run {run} has {before} here on line {line}";
}
