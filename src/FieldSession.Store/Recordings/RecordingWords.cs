namespace FieldSession.Store.Recordings;

/// <summary>What is said about files of recordings.</summary>
internal static class RecordingWords
{
    public const string Empty = "it holds no sample; record again";
    public const string UnknownFormat = "not a recording that is known here; give WAV or FLAC";
    public const string HeaderCutOff = "it ends within its header; copy it from the recorder again";
    public const string NoFormatChunk = "a WAV without a format; copy it from the recorder again";
    public const string NoSoundChunk = "a WAV without sound; copy it from the recorder again";
    public const string NotClosed = "the file was not closed by the recorder; it is read to its end";
    public const string NotANumber = "damaged: a sample is not a number; copy it from the recorder again";
    public const string Grew = "the file grew while it was read; stop the recorder and read it again";
    public const string FlacHeaderWrong = "damaged: its FLAC header is wrong; copy it from the recorder again";
    public const string FlacFormatChanges = "its rate, bits or channels change on the way; record one file for each setting";

    public static string Lossy(string name) => $"{name} is lossy, not for levels; record WAV or FLAC";

    public static string NotRead(string name) => $"{name} is not read here; convert it to WAV or FLAC without loss";

    public static string NoSuchChannel(int channel, int channels) => $"there is no channel {channel}; it has {channels}";

    public static string Bits(int bits) => $"{bits} bits a sample; levels need 16 or more";

    public static string Layout(int bits, int channels, int frameBytes) =>
        $"damaged header: {channels} channels of {bits} bits in {frameBytes} bytes a frame; copy it again";

    public static string RateTooLow(int rateHz) => $"{rateHz} samples a second; levels need 8000 or more, best 48000";

    public static string RateUnlikely(int rateHz) => $"{rateHz} samples a second can't be right; the header is damaged";

    public static string CutShort(double missingS) =>
        $"the file is {missingS:0.0###} s shorter than its header says; it is read to its end";

    public static string FlacDamaged(double atS) =>
        $"damaged near {atS:0.0} s: a check sum of FLAC is wrong; copy it from the recorder again";

    public static string FlacOutOfStep(double atS) =>
        $"damaged near {atS:0.0} s: a frame of FLAC is missing; copy it from the recorder again";
}

/// <summary>A recording that no level is taken from, and why.</summary>
/// <param name="why">What is wrong and what to do; without the file's name.</param>
public sealed class RecordingRefusedException(string why) : Exception(why);
