using System.Collections.Immutable;

namespace FieldSession.Store.Disks;

/// <summary>
/// Waits for whoever holds a file for a moment. On Windows one program can keep all others from a file that it has open, and virus scanners
/// do so with new files for about a second. Elsewhere nobody is kept out like this, and nothing is waited for.
/// </summary>
internal static class Patience
{
    private const int MostTries = 25;

    private static readonly TimeSpan BetweenTries = TimeSpan.FromMilliseconds(100);

    // sharing violation and lock violation of Windows (Microsoft Learn, System Error Codes)
    private static readonly ImmutableArray<int> Held = [unchecked((int)0x80070020), unchecked((int)0x80070021)];

    /// <summary>Takes a step as soon as nobody holds the file, for two and a half seconds; then the system's no is passed on.</summary>
    public static T With<T>(Func<T> step) => With(step, IsHeld);

    /// <summary>
    /// Gives a file another name or removes it, the same way. Windows answers 'access denied' where somebody has the file of that name
    /// open.
    /// </summary>
    public static void WithName(Action step) =>
        With(
            () =>
            {
                step();
                return true;
            },
            fault => IsHeld(fault) || (OperatingSystem.IsWindows() && fault is UnauthorizedAccessException)
        );

    private static T With<T>(Func<T> step, Func<Exception, bool> passes)
    {
        for (int tries = 1; ; tries++)
        {
            try
            {
                return step();
            }
            catch (Exception fault) when (tries < MostTries && passes(fault))
            {
                Thread.Sleep(BetweenTries);
            }
        }
    }

    private static bool IsHeld(Exception fault) => fault is IOException && Held.Contains(fault.HResult);
}
