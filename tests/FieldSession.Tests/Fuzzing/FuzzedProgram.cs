using System.Runtime.InteropServices;
using SharpFuzz;
using SharpFuzz.Common;

namespace FieldSession.Tests.Fuzzing;

/// <summary>
/// A program of its own in this assembly: one reader of bytes, fed by a fuzzer that watches which code a case reaches ('bash .ci/fuzz').
/// </summary>
internal static class FuzzedProgram
{
    /// <summary>'seeds FOLDER' writes what cases are made from; 'names' says what there is to feed; a name feeds that reader, a name and a
    /// file read this one file.</summary>
    public static int Run(string[] words)
    {
        if (words is ["seeds", var folder])
        {
            ByteReaders.All.ToList().ForEach(reader => WriteSeeds(reader, Path.Combine(folder, FileName(reader))));
        }
        else if (words is ["names"])
        {
            ByteReaders.All.ToList().ForEach(reader => Console.WriteLine(FileName(reader)));
        }
        else if (words is [var asked, var file])
        {
            Console.WriteLine(
                ByteReaders.All.Single(reader => FileName(reader) == asked).Read(File.ReadAllBytes(file)) ? "taken" : "refused"
            );
        }
        else
        {
            CountNowhere();
            ByteReader reader = ByteReaders.All.Single(reader => FileName(reader) == words[0]);
            Fuzzer.Run(stream => Feed(reader, stream));
        }

        return 0;
    }

    // the readers' own files are made by code that counts where it was, before there is a fuzzer to count for
    private static unsafe void CountNowhere() => Trace.SharedMem = (byte*)NativeMemory.AllocZeroed(1 << 16);

    private static string FileName(ByteReader reader) => reader.Name.Replace(' ', '-');

    private static void WriteSeeds(ByteReader reader, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach ((int number, byte[] seed) in reader.Seeds.Index())
        {
            File.WriteAllBytes(Path.Combine(folder, $"{number}"), seed);
        }
    }

    private static void Feed(ByteReader reader, Stream stream)
    {
        using MemoryStream bytes = new();
        stream.CopyTo(bytes);
        _ = reader.Read(bytes.ToArray());
    }
}
