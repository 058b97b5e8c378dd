namespace FieldSession.Store;

/// <summary>Why a text that a person wrote is not taken.</summary>
internal static class SmallTextWords
{
    public static string FileIsTooLarge(int mostMebibytes) => $"the file is larger than {mostMebibytes} MiB";

    public const string NameShortText = "name a text of some lines";
    public const string NoUtf8 = "the text is not UTF-8";
    public const string SaveAsUtf8 = "save the file as UTF-8";
}
