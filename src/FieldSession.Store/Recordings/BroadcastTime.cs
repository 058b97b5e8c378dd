using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace FieldSession.Store.Recordings;

/// <summary>The time in the broadcast chunk of a WAV file (EBU Tech 3285, from memory); its free text is never read.</summary>
/// <param name="SamplesSinceMidnight">Time reference of the first sample.</param>
/// <param name="BegunAt">Date and time of day; null: not readable.</param>
internal sealed record BroadcastTime(long SamplesSinceMidnight, DateTime? BegunAt)
{
    private const int DateAt = 320;
    private const int ReferenceAt = 338;
    private const int Length = 346;

    /// <summary>Reads the chunk; null: it is too short.</summary>
    public static BroadcastTime? Of(ReadOnlySpan<byte> chunk)
    {
        if (chunk.Length < Length)
        {
            return null;
        }

        // recorders part the numbers with '-', '_', ':', '.' or blank
        string text = new([.. Encoding.Latin1.GetString(chunk[DateAt..ReferenceAt]).Select(c => char.IsAsciiDigit(c) ? c : ' ')]);
        bool isTime = DateTime.TryParseExact(
            text.Replace(" ", "", StringComparison.Ordinal), "yyyyMMddHHmmss", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime begun);
        return new(BinaryPrimitives.ReadInt64LittleEndian(chunk[ReferenceAt..]), isTime ? begun : null);
    }
}
