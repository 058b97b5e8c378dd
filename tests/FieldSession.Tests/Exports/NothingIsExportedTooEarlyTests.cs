using FieldSession.Journal;
using FieldSession.Store.Exports;
using FieldSession.Tests.Making;
using FieldSession.Tests.Rating;

namespace FieldSession.Tests.Exports;

public sealed class NothingIsExportedTooEarlyTests
{
    private const string OfTam = "predict Tam feature=862 sure=3 quieter=417 pay=no because=sound whistle of the bank";
    private const string OfRo = "predict Ro feature=417 sure=5 because=seen";

    [Fact]
    public void A_prediction_stays_hidden_until_all_are_locked_and_the_journal_with_it()
    {
        using ExportedDay exported = new(ExportedDay.Demo().Typed(OfTam));
        Assert.DoesNotContain("predictions.csv", exported.Names);
        Assert.DoesNotContain("journal.jsonl", exported.Names);
        Assert.Equal(
            [
                "predictions.csv, because predictions stay hidden until all are locked; still open: Ro",
                "journal.jsonl, because predictions stay hidden until all are locked; still open: Ro",
            ],
            exported.Outcome.LeftOut
        );
        Assert.Contains(
            "Left out: predictions.csv, because predictions stay hidden",
            exported.Text("datapackage.json"),
            StringComparison.Ordinal
        );
        Assert.All(exported.Names, name => Assert.DoesNotContain("whistle", exported.Text(name), StringComparison.Ordinal));
    }

    [Fact]
    public void An_earlier_exports_file_that_is_hidden_now_does_not_stay_behind()
    {
        using ExportedDay exported = new(ExportedDay.Demo());
        Assert.Contains("journal.jsonl", exported.Names);
        exported.Day.Typed(OfTam);
        Assert.DoesNotContain("journal.jsonl", exported.Export().Names);
    }

    [Fact]
    public void Once_all_are_locked_they_are_in_their_table()
    {
        using ExportedDay exported = new(ExportedDay.Demo().Typed(OfTam, OfRo));
        List<Dictionary<string, string>> rows = exported.Rows("predictions");
        Assert.Empty(exported.Outcome.LeftOut);
        Assert.Equal(
            ["Tam,862,3,,417,false,sound,whistle of the bank", "Ro,417,5,,,,seen,"],
            rows.Select(row => string.Join(',', row.Values.Take(8)))
        );
    }

    [Fact]
    public void A_covered_rating_is_in_no_file_and_the_journal_waits_for_it()
    {
        using ExportedDay exported = new(AnEarDay.AtTheStop().Typed("rate Tam roar 6.25"));
        Assert.Equal(
            ["journal.jsonl, because ratings stay covered until all have stored theirs, or 'ratings closed'"],
            exported.Outcome.LeftOut
        );
        Assert.All(exported.Names, name => Assert.DoesNotContain("6.25", exported.Text(name), StringComparison.Ordinal));
        exported.Day.Typed("rate Ro roar 5.75");
        Assert.Equal(
            ["Tam,co-driver,2,862,coarse roar,6.25", "Ro,driver,2,862,coarse roar,5.75"],
            exported.Export().Rows("ratings").Select(row => string.Join(',', row.Values.Take(6)))
        );
    }

    [Fact]
    public void What_was_chosen_is_in_no_file_before_the_planned_end_of_its_set()
    {
        using ExportedDay exported = new(AnEarDay.Chosen("trials 862 417 n=6 seg=2 which is louder", 5, 5));
        Assert.Equal(
            ["journal.jsonl, because choices and the order of their trials stay covered until their set is at its planned end"],
            exported.Outcome.LeftOut
        );
        Assert.Empty(exported.Rows("choices"));
        exported.Day.Typed($"choose Ro {(exported.Day.Study.ChoiceSets[0].CodeAt(6, 1).Digits == "417" ? "first" : "second")} unseen");
        Assert.Equal(["862", "862", "862", "862", "862", "417"], exported.Export().Rows("choices").Select(row => row["chosen"]));
        Assert.All(exported.Rows("choices"), row => Assert.Equal(row["chosen"], row["presented"].Split(' ')[row["place"] == "1" ? 0 : 1]));
    }

    [Fact]
    public void The_order_of_trials_is_in_no_file_before_anybody_has_chosen()
    {
        using ExportedDay exported = new(AnEarDay.AtTheStop().Typed("trials 862 417 n=6 seg=2 which is louder"));
        Assert.All(exported.Names, name => Assert.DoesNotContain("\"BA\"", exported.Text(name), StringComparison.Ordinal));
        Assert.Contains(
            exported.Outcome.LeftOut,
            why => why.StartsWith("journal.jsonl, because choices and the order", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Levels_beside_dBA_are_in_a_table_of_their_own()
    {
        using ExportedDay exported = new(AnEarDay.AtTheStop().Typed("extra c=74.2 rec=take12"));
        Assert.Equal("2,862,3,74.2,,,take12", string.Join(',', Assert.Single(exported.Rows("extra")).Values.Take(7)));
    }

    [Fact]
    public void The_names_of_the_specs_are_in_no_file_before_the_reveal_and_in_the_key_after_it()
    {
        using ExportedDay exported = new(ExportedDay.Demo().Typed(OfTam, OfRo));
        Assert.DoesNotContain("key.csv", exported.Names);
        Assert.All(exported.Names, name => Assert.DoesNotContain("STIFFENED", exported.Text(name), StringComparison.OrdinalIgnoreCase));

        Assert.True(exported.Day.Book.Write(ExportedDay.Opened(exported.Day)).IsWritten);
        List<Dictionary<string, string>> key = exported.Export().Rows("key");
        Assert.Equal(
            ["417,ZANDERGRIP,true,ZANDERGRIP,true,ZANDERGRIP,", "862,'=QUORNWALL,false,'=QUORNWALL,true,'=QUORNWALL,"],
            key.Select(row => string.Join(',', row.Values.SkipLast(1)))
        );
    }

    [Fact]
    public void A_key_that_was_opened_for_one_study_does_not_stay_in_the_folder_of_the_next()
    {
        ADay opened = ExportedDay.Demo().Typed(OfTam, OfRo);
        Assert.True(opened.Book.Write(ExportedDay.Opened(opened)).IsWritten);
        using ExportedDay exported = new(opened);
        Assert.Contains("key.csv", exported.Names);
        ExportFolder.Write(exported.Path(""), ExportSource.Of(ExportedDay.Demo().Book), CancellationToken.None);
        Assert.DoesNotContain("key.csv", exported.Names);
    }

    [Fact]
    public void The_exported_journal_can_be_verified_line_by_line()
    {
        using ExportedDay exported = new(ExportedDay.Demo());
        Line?[] lines = [.. exported.Text("journal.jsonl").Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(JournalLines.Read)];
        Assert.Equal(exported.Day.Book.Lines, lines.OfType<Line>());
        Assert.All(lines.Index(), line => Assert.True(line.Item!.Follows(line.Index == 0 ? null : lines[line.Index - 1])));
        Assert.Null(
            JournalLines.Read(exported.Text("journal.jsonl").Split('\n')[6].Replace("reading", "readinh", StringComparison.Ordinal))
        );
        Assert.Contains($"head {exported.Day.Book.HeadHash}", exported.Text("summary.txt"), StringComparison.Ordinal);
    }
}
