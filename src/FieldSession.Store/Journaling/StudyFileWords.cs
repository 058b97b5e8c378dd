using System.Globalization;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What is said of a study's files: missing, damaged, repaired, in use.</summary>
internal static class StudyFileWords
{
    // what the disk says, and what to do
    public const string WritingIsNotAllowed = "writing is not allowed";
    public const string DriveIsGone = "the drive is gone";
    public const string DriveFails = "the drive fails or is gone";
    public const string DiskIsFull = "the disk is full";
    public const string DriveDoesNotAnswer = "the drive does not answer";
    public const string ShareGivesNoLocks = "the share does not lock files";
    public const string DriveMayOnlyBeRead = "the drive may only be read";
    public const string MakeRoom = "Make room on it";
    public const string BringItBack = "Bring it back";
    public const string BringItBackOrGoOnElsewhere = "Bring it back, or go on with a copy on another one";
    public const string SeeToCableOrNetwork = "Check its cable or network";
    public const string LetServerGiveLocks = "Make its server lock files again";
    public const string AllowWriting = "Allow writing there";

    public static string LineIsNotSafe(Exception fault, int line, int? firstLost, string path) => $"{DiskTrouble.InWords(fault)}: line {line} is not in {path}{(firstLost is null ? "; every line before it is" : "")}. {DiskTrouble.Remedy(fault)}, then do the act again.{(firstLost is { } lost ? LinesAreLostToo(lost) : "")}";

    private static string LinesAreLostToo(int first) => $" The disk also lost line {first} and what follows, which it had confirmed; they are in memory, so keep this program open: it writes them again with the next act.";

    public static string StudyIsFull(string path, long mebibytes, long mostMebibytes) => $"the study is full: {path} has {mebibytes} MiB, and {mostMebibytes} MiB is the most. Begin a new study.";

    public static string FileBecameShorter(string path) => $"{path}: the file became shorter while it was open.";

    public static string AnotherFileLiesThere(string path) => $"{path}: another file is there now.";

    public static string DiskGivesBackOther(string path) => $"{path}: the disk took the lines but reads back different ones.";

    public const string FileIsOnlyLookedAt = "the file is only read";

    // opening, making and copying
    public static string NoStudyHere(StudyPaths paths) => $"{paths.Study}: there is no study here. Check the path.";

    public static string NoStudyToRead(StudyPaths paths) => $"{paths.Study}: there is no study here, neither this file nor {Path.GetFileName(paths.Journal)}. Nothing was changed. Check the path.";

    public static string NoStudyToOpen(StudyPaths paths) => $"{paths.Study}: there is no study here, neither this file nor {Path.GetFileName(paths.Journal)}. Nothing was changed. Check the path, or make a new study.";

    public static string StudyIsOnlyRead(string path) => $"{path}: the study is only read here. Nothing was changed.";

    public static string ReadFromOtherCopy(string file, int lines) => $"{file}: this copy is missing, short or damaged; the study's {lines} lines were read from its other copy. Nothing was changed. 'enter' or 'drive' repairs it and keeps the old file.";

    public static string NameIsOfJournal(string path, string studyPath) => $"{path}: this is the name of a study's journal. Name the study itself, for example {studyPath}.";

    public static string NameIsTaken(string taken) => $"{taken}: a file is there already. Nothing was changed. Choose another name, or open that study.";

    public static string FileMayNotBeWritten(string path, Exception fault) => $"{path}: the file or its folder may not be written to ({fault.Message}). Nothing was changed. Allow writing there, or copy the study to a folder that may be written to.";

    public static string NoSuchFileOrFolder(string path, Exception fault) => $"{path}: there is no such file or folder ({fault.Message}). Nothing was changed. Check the path.";

    public static string StudyIsTooLarge(string path, long mebibytes, long mostMebibytes) => $"{path}: {mebibytes} MiB are more than the {mostMebibytes} MiB that a study may have. Nothing was changed. Check the path; if this is the study, bring back a copy of it.";

    public static string StudyIsInUse(string path) => $"{path}: the study is open in another window or program. Nothing was changed. Close it there, then open it here.";

    public static string OtherStateLiesThere(StudyPaths target) => $"{target.Study}: another study, or a newer state of this one, is there already. Nothing was changed. Copy into another folder.";

    // the text
    public const string LineIsBroken = "its 64 digits are not the hash of its text, or it is not a line";

    public static string LineDoesNotFollow(Line line, Line head) => $"it is line {line.Number} of strand {line.Strand} and does not follow line {head.Number}, the last one that holds: a line between was changed, removed or put in";

    public static string LineDoesNotBeginStrand(Line line) => $"it is line {line.Number} of strand {line.Strand} and does not begin it: the lines before it are missing";

    // the LiteDB file
    public static string StoreIsTooShort(ReadOnlySpan<byte> file) => $"it is only {file.Length} bytes long, less than the head of a study";

    public const string StoreBeginsOtherwise = "it does not begin like a study (no LiteDB head)";

    public static string StoreIsOfOtherFormat(byte found, byte readable) => $"it is of LiteDB file format {found}; this program reads format {readable}";

    public static string StoreCantBeRead(string why) => $"LiteDB can't read it ({why})";

    public const string StoreLeadsFarBeyond = "its pages lead far beyond the end of the file";

    public const string StoreIsGoneOrEmpty = "the file is gone or empty; only LiteDB's log of it is left";
    public const string PlaceIsTakenOrNone = "a document claims a place that is taken, or no place";

    public static string PlacesAreMissing(long from, long to) => $"no document holds the places {from} to {to}";

    public const string HashIsNotOfText = "its hash is not the hash of its text";

    public static string EndsDiffer(int forwards, long backwards) => $"it ends at place {forwards} when read forwards and at place {backwards} when read backwards";

    public const string StoreHoldsOtherLines = "it holds other lines than the text";

    // what is lost
    public const string HoldsNoJournal = "it holds no journal";

    public static string NoLineIsLeft(StudyPaths paths, string beside, string fault) => $"{paths.Study}: no line of a study is in it{beside}: {fault}. Nothing was overwritten. Check the path.";

    public static string NorInJournal(StudyPaths paths) => $" nor in {Path.GetFileName(paths.Journal)}";

    public static string JournalIsNotBesideIt(StudyPaths paths) => $", and {Path.GetFileName(paths.Journal)} is not beside it";

    public static string LinesBeforeAreLost(Line first) => $"lines before line {first.Number} of strand {first.Strand} are lost in both copies";

    public const string MoreThanLastLineIsLost = "more than the last line of the text can't be read, and the study file does not hold those lines";

    public static string PlaceIsDamaged(Finding finding) => $"place {finding.Store.FaultAt} of the study file is damaged ({finding.Store.Fault}), and the text does not hold that line";

    public static string StudyIsDamaged(string where, string damage, Finding finding, StudyPaths paths) => $"{where}: {damage}. {finding.Lines.Count} lines are whole. Nothing was overwritten. Bring back a copy of the study, or save the lines that are whole: 'fieldsession rescue {Path.GetFileName(paths.Study)} --out NEW'.";

    // what was repaired
    public static string StoreIsMadeAgain(StudyPaths paths, string why, string kept) => $"{paths.Study} was damaged ({why}); it was made again from the text; the old file is kept in {kept}.";

    public static string StoreWasBehind(StudyPaths paths, Finding finding) => $"{paths.Study} was behind; lines {finding.Store.Lines.Count + 1} to {finding.Lines.Count} were brought in from the text.";

    public static string JournalWasWrittenAgain(StudyPaths paths, string kept) => $"{paths.Journal} was damaged; it was written again from the copies; the old file is kept in {kept}.";

    public static string HalfLineWasCutOff(StudyPaths paths, string kept) => $"{paths.Journal} ended in half a line that was never acknowledged; it was cut off, and what it was is kept in {kept}.";

    public static string JournalWasShort(StudyPaths paths, Finding finding, string kept) => $"{paths.Journal} was short; lines {finding.Text.Lines.Count + 1} to {finding.Lines.Count} were brought back from the other copy, and what it was is kept in {kept}.";

    public static string JournalWasMissing(StudyPaths paths, Finding finding) => $"{paths.Journal} was missing or empty; its {finding.Lines.Count} lines were brought back from the other copy.";

    public static string AcknowledgedLinesAreMissing(string path, StrandHead head, IReadOnlyList<Line> lines) => $"{path}: {head.Lines} lines of strand {head.Strand} were acknowledged on this laptop, the last with the hash {head.Hash[..16]}, and that line is not in this file, which holds {lines.Count(line => line.Strand == head.Strand)} of the strand. It is an older copy, or a disk lost them: look for a newer copy and merge it.";

    public static string RemoveRecord(string record) => $"To take the file as it is, remove {record}.";

    public static string RemarkOnUnsaved(UnsavedAct act) => string.Create(
        CultureInfo.InvariantCulture, $"# {act.At.UtcDateTime:yyyy-MM-dd HH:mm:ss} UTC, not saved: {act.Because.ReplaceLineEndings(" ")}");

    // two copies of one study
    public static string CopiesHaveTwoHistories(string study, Line line) => $"{study}: two different lines claim to be line {line.Number} of strand {line.Strand}, so the study has two histories. Nothing was overwritten. Verify each copy, keep the one that is right and move the other one away, then open the study again.";

    public static string FilesAreOfTwoStudies(string one, string oneName, string other, string otherName) => $"{one} and {other} are of two studies: the first is {oneName}, the second {otherName}. Nothing was changed. Move the one that does not belong here away and bring its own file; a study's files are copied together.";

    public static string CopyIsOfAnotherStudy(string path, StudyFile study) => $"{path}: this is another study than {study.Path}, for its first line is another one. Nothing was changed. Only copies of one study can be merged: hand the study over as a file once, before both laptops enter.";

    public static string StrandHasTwoHistories(string path, Line line) => $"{path}: strand {line.Strand} goes on differently from line {line.Number} on, so one laptop has written two histories, as happens where an older copy was put in the place of a newer one and written on. Nothing was changed. Verify both files, keep the one that is right, and type the acts of the other one in again.";

    // saving what is whole
    public static string NothingToRescue(StudyPaths damaged) => $"{damaged.Study}: no line is whole in any copy. Nothing was changed. Bring back a copy of the study.";

    public static string RescueNameIsTaken(string taken) => $"{taken}: a file is there already. Nothing was changed. Choose another name for the new study.";
}
