using System.Runtime.CompilerServices;

namespace FieldSession.Tests.Ptys;

/// <summary>A test that needs a pseudo terminal and 'setsid', as every Linux has them; elsewhere it is passed over and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class PtyFactAttribute : FactAttribute
{
    public PtyFactAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) => Skip = Pty.WhyNot;
}

/// <summary>The same with several cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class PtyTheoryAttribute : TheoryAttribute
{
    public PtyTheoryAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) => Skip = Pty.WhyNot;
}

/// <summary>Whether programs can be run in pseudo terminals here.</summary>
internal static class Pty
{
    public const string Collection = "pseudo terminals";

    public static string? WhyNot =>
        !OperatingSystem.IsLinux() ? "pseudo terminals are asked for as Linux names them"
        : !File.Exists("/usr/bin/setsid") && !File.Exists("/bin/setsid") ? "'setsid' is missing (package util-linux)"
        : null;
}
