using System.Collections.Immutable;

namespace FieldSession.Tests.Faults;

/// <summary>A system call that fails.</summary>
/// <param name="Call">Its kind: write, fsync, ftruncate, open, close, rename, link, unlink, mkdir, say or tell for what goes to the
/// shell.</param>
/// <param name="Nth">The first one of its kind that fails, from 1.</param>
/// <param name="Count">How many of them fail from there on; 0: all.</param>
/// <param name="What">An error number, 'short', 'kill' (before the call) or 'killed' (after it).</param>
/// <param name="Ending">Only files whose name ends so.</param>
internal sealed record CallFault(string Call, int Nth, int Count, string What, string Ending = "")
{
    public const string InputOutput = "5";
    public const string NoSpace = "28";

    // Linux errno.h: EIO, ENOSPC, EDQUOT, EROFS, EINTR
    private static readonly ImmutableArray<(string What, int Count)> Ways =
    [
        (InputOutput, 1),
        (NoSpace, 1),
        ("122", 1),
        ("30", 1),
        ("4", 1),
        (InputOutput, 0),
        (NoSpace, 0),
        ("30", 0),
        ("kill", 1),
        ("killed", 1),
    ];

    /// <summary>Whether it ends the program.</summary>
    public bool Kills => What is "kill" or "killed";

    /// <summary>Whether a program is right to go on as if nothing had happened: it only has to ask again.</summary>
    public bool IsNoFault => What is "4" or "short";

    /// <summary>The words for 'callfaults'.</summary>
    public string[] Words => ["-o", Ending, "-f", $"{Call}:{Nth}:{Count}:{What}"];

    /// <summary>Every fault of every call that was made.</summary>
    public static IEnumerable<CallFault> Of(IEnumerable<CallMade> calls) =>
        from kind in calls.GroupBy(call => call.Kind)
        from nth in Enumerable.Range(1, kind.Count())
        from way in Ways.Concat(kind.Key is "write" ? [("short", 1), ("short", 0)] : [])
        where kind.Key is not ("say" or "tell" or "close") || way.What != "killed"
        select new CallFault(kind.Key, nth, way.Count, way.What);

    public override string ToString() =>
        $"{Call} {Nth}{(Count == 0 ? " and all after" : "")} {What}{(Ending.Length == 0 ? "" : $" on *{Ending}")}";
}
