using System.Text;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Journeys;

/// <summary>A sealed day by keys, every screen captured: no spec name is ever drawn.</summary>
public class NoScreenNamesASpecTests
{
    private const string Specs = "ZWIEBELTURM\nKRAKENSPUR";

    [Fact]
    public void From_the_first_run_to_the_last_no_screen_holds_a_name()
    {
        ADay day = new(isSealed: false);
        KeySheet key = KeySheet.Drawn("T-1", SpecList.Parse(Specs, 2, out _)!, [], new SeededLot(4));
        Assert.True(day.Book.Write(new SpecsSealed(key.Codes, Commitment.Of(key))).IsWritten);
        day.Ready();
        StringBuilder seen = new();
        using (Tui tui = new(day))
        {
            foreach (string keys in Acts())
            {
                seen.AppendLine(tui.Keys(keys).Screen);
            }
        }

        foreach (Line line in day.Journal.Lines)
        {
            seen.AppendLine(line.ToString());
        }

        Assert.Equal(3, day.Study.Runs.Count);
        Assert.Contains(key.Codes[0].Digits, seen.ToString());
        Assert.All(Specs.Split('\n'), spec => Assert.DoesNotContain(spec, seen.ToString(), StringComparison.OrdinalIgnoreCase));
    }

    private static IEnumerable<string> Acts()
    {
        yield return "?";
        yield return "<Esc>";
        for (int run = 0; run < 3; run++)
        {
            yield return "<Enter>";
            yield return "6062<Enter>";
            yield return "t";
            yield return "6466<Enter>";
            yield return "; grit<Enter>";
            yield return "714<Enter>";
        }

        yield return "run 999<Enter>";
        yield return "rubbish<Enter>";
    }
}
