using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What is said of a study's files: missing, damaged, repaired, in use.</summary>
internal static class StudyFileWords
{
    // opening, making and copying
    public static string NoStudyHere(StudyPaths paths) => $"{paths.Study}: there is no study here. Check the path.";

    public static string NoStudyToRead(StudyPaths paths) =>
        $"{paths.Study}: there is no study here, neither this file nor {Path.GetFileName(paths.Journal)}. Nothing was "
        + "changed. Check the path.";

    public static string NoStudyToOpen(StudyPaths paths) =>
        $"{paths.Study}: there is no study here, neither this file nor {Path.GetFileName(paths.Journal)}. Nothing was "
        + "changed. Check the path, or make a new study.";

    public static string StudyIsOnlyRead(string path) => $"{path}: the study is only read here. Nothing was changed.";

    public static string ReadFromOtherCopy(string file, int lines) =>
        $"{file}: this copy is missing, short or damaged; the study's {lines} lines were read from its other copy. "
        + "Nothing was changed. 'enter' or 'drive' repairs it and keeps the old file.";

    public static string NameIsTaken(string taken) =>
        $"{taken}: a file is there already. Nothing was changed. Choose another name, or open that study.";

    public static string OtherStateLiesThere(StudyPaths target) =>
        $"{target.Study}: another study, or a newer state of this one, is there already. Nothing was changed. Copy into another folder.";

    public static string AcknowledgedLinesAreMissing(string path, StrandHead head, IReadOnlyList<Line> lines) =>
        $"{path}: {head.Lines} lines of strand {head.Strand} were acknowledged on this laptop, the last with the hash "
        + $"{head.Hash[..16]}, and that line is not in this file, which holds "
        + $"{lines.Count(line => line.Strand == head.Strand)} of the strand. It is an older copy, or a disk lost them: look "
        + "for a newer copy and merge it.";

    public static string RemoveRecord(string record) => $"To take the file as it is, remove {record}.";

    public static string CopyIsOfAnotherStudy(string path, string study) =>
        $"{path}: this is another study than {study}, for its first line is another one. Nothing was changed. Only copies "
        + "of one study can be merged: hand the study over as a file once, before both laptops enter.";

    public static string StrandHasTwoHistories(string path, Line line) =>
        $"{path}: strand {line.Strand} has two histories from line {line.Number} on. That happens where an older copy took "
        + "the place of a newer one and was written on. Nothing was changed. Verify both files and keep the right one. Then "
        + "type the acts of the other one in again.";
}
