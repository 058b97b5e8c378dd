using FieldSession.Store.Readings;

namespace FieldSession.Tests.Readings;

public class CountedStreamTests
{
    [Fact]
    public void A_file_without_end_is_read_to_the_limit_and_not_much_further()
    {
        using CountedStream stream = new(new Endless());
        byte[] buffer = new byte[4 << 20];
        while (stream.Read(buffer) > 0)
        {
            Assert.InRange(stream.Count, 1, CsvLimits.Bytes + buffer.Length);
        }

        Assert.InRange(stream.Count, CsvLimits.Bytes + 1, CsvLimits.Bytes + buffer.Length);
    }

    /// <summary>A stream that always has more.</summary>
    private sealed class Endless : MemoryStream
    {
        public override int Read(Span<byte> buffer) => buffer.Length;
    }
}
