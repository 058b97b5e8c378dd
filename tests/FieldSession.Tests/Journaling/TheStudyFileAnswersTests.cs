using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;
using LiteDB;

namespace FieldSession.Tests.Journaling;

/// <summary>
/// Any LiteDB program can question a study file: its documents have fields beside the exact line, which stays the only thing that is
/// trusted.
/// </summary>
public sealed class TheStudyFileAnswersTests : IDisposable
{
    private readonly AtThePrompt _day = AWholeDay.Sealed();

    public void Dispose() => _day.Dispose();

    [Fact]
    public void The_three_questions_of_the_documents_are_answered_from_the_fields()
    {
        string code = Drive();
        using LiteDatabase file = new($"Filename={_day.Study};ReadOnly=true");
        string[] questions =
        [
            .. File.ReadAllText(Path.Combine(Repository.Root, "docs/files.md"))
                .Split('\n')
                .Where(line => line.StartsWith("    SELECT ", StringComparison.Ordinal))
                .Select(line => line.Trim()),
        ];
        Assert.Equal(3, questions.Length);

        Assert.Equal(["58-60", "64-69"], Answers(file, questions[0]).Select(row => $"{row["low"].AsDouble}-{row["high"].AsDouble}"));
        Assert.Equal(["2 traffic"], Answers(file, questions[1]).Select(row => $"{row["segment"].AsInt32} {row["cause"].AsString}"));
        Assert.Equal(
            ["calibration 1", "reading 2", "run 1"],
            Answers(file, questions[2])
                .Select(row => $"{row["kind"].AsString} {row["lines"].AsInt32}")
                .Where(row => row.StartsWith("calibration", StringComparison.Ordinal) || row.StartsWith('r'))
                .Order(StringComparer.Ordinal)
        );
        BsonDocument first = file.GetCollection("journal").FindOne(Query.EQ("segment", 1));
        Assert.Equal((1, code), (first["run"].AsInt32, first["code"].AsString));
        Assert.Equal(
            ["_id", "kind", "run", "segment"],
            file.GetCollection("$indexes")
                .Find(Query.EQ("collection", "journal"))
                .Select(index => index["name"].AsString)
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_file_of_an_older_program_opens_and_goes_on_and_a_changed_field_is_believed_by_nobody()
    {
        Drive();
        IReadOnlyList<Line> before = ReadStudy.At(_day.Study).Lines;
        using (LiteDatabase file = new($"Filename={_day.Study}"))
        {
            ILiteCollection<BsonDocument> journal = file.GetCollection("journal");
            foreach (string index in new[] { "kind", "run", "segment" })
            {
                journal.DropIndex(index);
            }

            foreach (BsonDocument document in journal.FindAll().ToArray())
            {
                bool isOld = document["_id"].AsInt64 % 2 == 0;
                _ = journal.Update(
                    isOld
                        ? new BsonDocument
                        {
                            ["_id"] = document["_id"],
                            ["hash"] = document["hash"],
                            ["json"] = document["json"],
                        }
                        : Changed(document)
                );
            }
        }

        File.Delete(Path.ChangeExtension(_day.Study, ".journal"));
        _day.Must(ExitCode.Done, ["enter", _day.Study], "71\n");
        Assert.Equal(before, ReadStudy.At(_day.Study).Lines.Take(before.Count));
        _day.Must(ExitCode.Done, ["verify", _day.Study]);
    }

    private static BsonDocument Changed(BsonDocument document)
    {
        document["low"] = 1.0;
        document["run"] = 77;
        return document;
    }

    private static BsonDocument[] Answers(LiteDatabase file, string question) =>
        [.. file.Execute(question).ToEnumerable().Select(value => value.AsDocument)];

    private string Drive()
    {
        string code = Logbook.Fold(ReadStudy.At(_day.Study).Lines).Fittings[0].Codes[0].Digits;
        _day.Must(
            ExitCode.Done,
            ["enter", _day.Study],
            $"calibration before 94.0\nweather air=6 road=5 wind=2 surface=dry\nrun {code}\n58-60\n64-69 t\n"
        );
        return code;
    }
}
