using System.Text;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journaling;

/// <summary>A thousand edits of a day's journal, drawn by a fixed seed: every one is found, and the edited line is named.</summary>
public sealed class EveryEditIsFoundTests : IDisposable
{
    private const int Edits = 1000;
    private const string FreshHash = "another text with a fresh hash";

    private readonly Folder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Not_one_edit_of_a_thousand_goes_unseen()
    {
        byte[][] lines = [.. Written().Select(line => Encoding.UTF8.GetBytes(line.ToString()))];
        Random lot = new(20260203);
        List<string> unseen = [];
        for (int edit = 0; edit < Edits; edit++)
        {
            int at = lot.Next(lines.Length);
            (string what, byte[][] edited) = Edited(lines, at, lot);
            File.WriteAllBytes(_folder.Text, [.. edited.SelectMany(line => line.Append((byte)'\n'))]);
            JournalCheck check = JournalCheck.Of(_folder.Study);
            // with a fresh hash the next line no longer follows, and the other copy names the line itself
            bool isFresh = what == FreshHash;
            bool isNamed =
                (isFresh ? check.FirstDifference : check.Text.FirstFailing) == at + 1 || (check.Text.Holds && at == lines.Length - 1);
            if (check.Holds || !isNamed)
            {
                unseen.Add($"edit {edit}, line {at + 1}, {what}: {check.Text.FirstFailing}");
            }
        }

        Assert.True(unseen.Count == 0, string.Join('\n', unseen));
    }

    private List<Line> Written()
    {
        ADay day = ARoute.Driven().Typed("; grit", "run 417", "5356", "6062 t", "6365");
        List<Line> lines = [.. day.Journal.Lines];
        using StudyFile study = StudyFile.Create(_folder.Study, new StoppedClock());
        lines.ForEach(study.Append);
        return lines;
    }

    private static (string What, byte[][] Lines) Edited(byte[][] lines, int at, Random lot)
    {
        byte[] line = lines[at];
        int place = lot.Next(line.Length);
        byte other = (byte)(line[place] ^ (1 << lot.Next(7)));
        return lot.Next(6) switch
        {
            0 when other != '\n' => ($"byte {place} changed", With(lines, at, [.. line[..place], other, .. line[(place + 1)..]])),
            1 => ($"byte {place} taken out", With(lines, at, [.. line[..place], .. line[(place + 1)..]])),
            2 => ($"a byte put in at {place}", With(lines, at, [.. line[..place], (byte)('0' + lot.Next(10)), .. line[place..]])),
            3 => ("taken out", [.. lines[..at], .. lines[(at + 1)..]]),
            4 => (FreshHash, With(lines, at, Rehashed(line))),
            _ => ("a digit changed", With(lines, at, OtherDigit(line, lot))),
        };
    }

    private static byte[][] With(byte[][] lines, int at, byte[] line) => [.. lines[..at], line, .. lines[(at + 1)..]];

    private static byte[] OtherDigit(byte[] line, Random lot)
    {
        int[] digits = [.. Enumerable.Range(0, line.Length).Where(i => char.IsAsciiDigit((char)line[i]))];
        int place = digits[lot.Next(digits.Length)];
        byte[] edited = [.. line];
        edited[place] = (byte)('0' + ((line[place] - '0' + 1 + lot.Next(9)) % 10));
        return edited;
    }

    // The text says something else and its hash is right: only the next line's 'prev', or the other copy, tells.
    private static byte[] Rehashed(byte[] line)
    {
        string json = Encoding
            .UTF8.GetString(line)[65..]
            .Replace("\"at\":\"2026-02-03T09", "\"at\":\"2026-02-03T07", StringComparison.Ordinal);
        string hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(json)));
        return Encoding.UTF8.GetBytes($"{hash} {json}");
    }
}
