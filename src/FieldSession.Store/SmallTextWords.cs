namespace FieldSession.Store;

/// <summary>Why a text that a person wrote is not taken.</summary>
internal static class SmallTextWords
{
    public const string NameTextOfSomeLines = "name a text of some lines";
    public const string TextIsNot = "the text is not UTF-8";
    public const string SaveFileAs = "save the file as UTF-8";

    public static string FileIsLargerThanMib(int mostBytes) => $"the file is larger than {mostBytes} MiB";
}
