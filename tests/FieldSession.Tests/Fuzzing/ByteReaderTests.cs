using System.Diagnostics;
using FieldSession.Tests.Faults;

namespace FieldSession.Tests.Fuzzing;

/// <summary>
/// Broken files of every sort into every reader of bytes. FIELDSESSION_BYTES sets how many in all; the same number gives the same files.
/// Guided by coverage: 'bash .ci/fuzz'.
/// </summary>
public sealed class ByteReaderTests(ITestOutputHelper output)
{
    private const int Cases = 3000;

    public static TheoryData<string> Names => [.. ByteReaders.All.Select(reader => reader.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Any_bytes_are_taken_whole_or_refused_with_a_reason(string name)
    {
        ByteReader reader = ByteReaders.All.Single(one => one.Name == name);
        long from = Stopwatch.GetTimestamp();
        int cases = Math.Max(20, FaultTests.Number("FIELDSESSION_BYTES", Cases) / 100 * reader.Share);
        int taken = 0;
        (TimeSpan Took, int Seed) slowest = default;
        for (int seed = 0; seed < cases; seed++)
        {
            byte[] bytes = reader.Case(new Random(seed));
            long at = Stopwatch.GetTimestamp();
            taken += IsTaken(reader, bytes, seed) ? 1 : 0;
            slowest = Stopwatch.GetElapsedTime(at) is var took && took > slowest.Took ? (took, seed) : slowest;
        }

        output.WriteLine(
            $"{name}: {cases} cases, {taken} taken, {cases - taken} refused, {Stopwatch.GetElapsedTime(from).TotalSeconds:0.0} s, "
                + $"the slowest {slowest.Took.TotalMilliseconds:0} ms (seed {slowest.Seed})"
        );
        Assert.InRange(taken, 1, cases);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_the_cases_are_made_from_is_taken(string name)
    {
        ByteReader reader = ByteReaders.All.Single(one => one.Name == name);

        Assert.All(reader.Seeds, seed => Assert.True(reader.Read(seed)));
    }

    private static bool IsTaken(ByteReader reader, byte[] bytes, int seed)
    {
        try
        {
            return reader.Read(bytes);
        }
        catch (Exception fault)
        {
            throw new InvalidOperationException($"{reader.Name}, seed {seed}: {Convert.ToBase64String(bytes)}", fault);
        }
    }
}
