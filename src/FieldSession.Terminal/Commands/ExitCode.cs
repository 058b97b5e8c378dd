using FieldSession.Journal;

namespace FieldSession.Terminal.Commands;

/// <summary>What a command says to the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The answer is no: a rule rules it out, a check failed, some lines were refused.</summary>
    public const int No = 1;

    /// <summary>The words or the input are wrong.</summary>
    public const int Wrong = 2;

    /// <summary>A file is damaged, locked or can't be written.</summary>
    public const int Damaged = 3;

    /// <summary>Each code and what it means.</summary>
    public static (string Name, string Words)[] Meanings =>
    [
        ($"{Done}", "done."),
        ($"{No}", CommandWords.ExitAnswerNo),
        ($"{Wrong}", CommandWords.ExitInputWrong),
        ($"{Damaged}", CommandWords.ExitFileDamaged),
    ];

    /// <summary>The code for what came of one act.</summary>
    public static int Of(Outcome outcome) => outcome switch
    {
        { IsWritten: true } => Done,
        { NotSavedBecause: not null } => Damaged,
        _ => No,
    };
}
