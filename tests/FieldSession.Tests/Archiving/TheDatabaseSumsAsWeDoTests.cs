using System.Globalization;
using FieldSession.Archiving;
using FieldSession.Comparing;
using FieldSession.Store.Archiving;
using FieldSession.Store.Exports.Sql;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Archiving;

/// <summary>
/// Exports in SQL, loaded into a real PostgreSQL and read in place by DuckDB: the sums are ours, and a study is in it once.
/// </summary>
public sealed class TheDatabaseSumsAsWeDoTests : IDisposable
{
    private readonly AnArchive _archive = new();

    public void Dispose() => _archive.Dispose();

    [Theory]
    [InlineData(SqlEngine.PostgreSql, "schema.sql")]
    [InlineData(SqlEngine.DuckDb, "in-place.sql")]
    public void The_kept_schema_is_drawn_from_the_tables_of_the_export(SqlEngine engine, string file) =>
        Golden.Approve($"docs/team/{file}", SqlSchema.Of(engine));

    [FactWithPostgres]
    public void Both_engines_answer_every_question_alike_and_sum_as_the_program_does()
    {
        _archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        using APostgres database = Made();
        string[] folders = [Exported("AR-1"), Exported("AR-2")];
        database.Run("bash", [TeamFiles.Path("load.sh"), .. folders]);
        database.Run("bash", [TeamFiles.Path("load.sh"), .. folders]);
        using ADuckDb embedded = new(_archive.Prompt.Here("out"));

        foreach ((int number, string question) in TeamFiles.Questions)
        {
            IsAlike(number, database.Ask(question), embedded.Ask(question));
        }

        foreach (string study in new[] { "AR-1", "AR-2" })
        {
            FieldSession.State.Study told = Logbook.Fold(ReadStudy.At(_archive.Prompt.Here($"archive/{study}.study")).Lines);
            MeasuredLevel[] levels = [.. StudyReadings.Of(told).Levels];
            MeasuredLevel[] counted = [.. levels.Where(level => !level.Spoilt)];
            const string Sums =
                "SELECT count(DISTINCT run), count(high), sum(CASE WHEN high IS NOT NULL AND spoilt IS NULL THEN 1 ELSE 0 END), "
                + "round(CAST(sum(CASE WHEN spoilt IS NULL THEN (low + high) / 2 END) AS numeric), 3) FROM readings JOIN study "
                + "USING (study) WHERE name = ";
            string expected = string.Create(
                CultureInfo.InvariantCulture,
                $"{told.Runs.Count}|{levels.Length}|{counted.Length}|{counted.Sum(level => level.LevelDb):0.000}"
            );
            Assert.Equal(expected, database.Ask($"{Sums}'{study}'"));
            Assert.Equal(expected, embedded.Ask($"{Sums}'{study}'"));
            double d = double.Parse(
                database.Ask($"SELECT d FROM comparisons JOIN study USING (study) WHERE name = '{study}' AND class = 'steady'"),
                CultureInfo.InvariantCulture
            );
            Assert.Equal(
                BlindComparison.InFull(StudyReadings.Of(told), StudyTerms.Of(told)).Comparisons[0].Classes.Steady!.Overall!.DifferenceDb,
                d,
                12
            );
        }

        ArchivedStudy[] studies = [.. ArchiveFolder.Read(_archive.Folder).Studies];
        ArchiveSum steady = ArchiveSum.Of(studies).First(sum => sum is { By: "class", Group: "steady" });
        string[] repeat = database
            .Ask(TeamFiles.Questions[3])
            .Split('\n')
            .First(line => line.StartsWith("steady|", StringComparison.Ordinal))
            .Split('|');
        Assert.Equal((steady.RunSdDb!.Value, steady.NuRun), (Number(repeat[2]), Number(repeat[3])));
        Assert.Equal("ear|2\nmeter|2\nworth|2", database.Ask("SELECT line, count(*) FROM verdict GROUP BY line ORDER BY line"));
        AnswersAre(database, ArchiveAnswers.Of(studies));
        Assert.Contains("STIFFENED", database.Ask(TeamFiles.Questions[13]), StringComparison.Ordinal);
    }

    [FactWithPostgres]
    public void Two_crews_with_one_study_name_are_both_in_an_older_state_and_foreign_rows_are_refused()
    {
        using AnArchive other = new();
        _archive.Finished("AR-1", 0.6);
        other.Finished("AR-1", 1.0);
        string study = _archive.Prompt.Here("archive/AR-1.study");
        string older = _archive.Prompt.Here("out/older");
        _archive.Prompt.Write(
            "old/AR-1.journal",
            string.Concat(File.ReadLines(Path.ChangeExtension(study, ".journal")).Take(12).Select(line => line + "\n"))
        );
        _archive.Prompt.Must(ExitCode.Done, ["export", _archive.Prompt.Here("old/AR-1.study"), "--out", older]);
        other.Prompt.Must(ExitCode.Done, ["export", other.Prompt.Here("archive/AR-1.study"), "--out", other.Prompt.Here("out/it's")]);
        using APostgres database = Made();

        // each earlier state goes on to the later one
        database.Run("bash", TeamFiles.Path("load.sh"), older, other.Prompt.Here("out/it's"), Exported("AR-1"));
        Assert.Equal("AR-1|2|2", database.Ask("SELECT name, count(*), count(DISTINCT study) FROM study WHERE finished GROUP BY name"));

        string before = database.Ask("SELECT count(*), round(CAST(sum(low) AS numeric), 3) FROM readings");
        (int code, string said) = database.Try("bash", TeamFiles.Path("load.sh"), older, other.Prompt.Here("out/it's"));
        Assert.Equal(1, code);
        Assert.Contains("is loaded in a later state", said, StringComparison.Ordinal);
        Assert.Contains("it's: loaded", said, StringComparison.Ordinal);

        string readings = Path.Combine(Exported("AR-1"), "readings.csv");
        string identity = StudyState.IdentityOf(ReadStudy.At(study).Lines)!.Value.Hash;
        File.WriteAllText(readings, File.ReadAllText(readings).Replace(identity, new string('f', 64), StringComparison.Ordinal));
        (code, said) = database.Try("bash", TeamFiles.Path("load.sh"), Path.GetDirectoryName(readings)!);
        Assert.Equal(1, code);
        Assert.Contains("holds rows of another study", said, StringComparison.Ordinal);
        Assert.Equal(before, database.Ask("SELECT count(*), round(CAST(sum(low) AS numeric), 3) FROM readings"));
    }

    private static void AnswersAre(APostgres database, ArchiveAnswers answers)
    {
        string Lines<T>(IEnumerable<T> rows, Func<T, FormattableString> line) =>
            string.Join('\n', rows.Select(row => FormattableString.Invariant(line(row))));
        string Asked(int question, params int[] cells) =>
            string.Join(
                '\n',
                database
                    .Ask(TeamFiles.Questions[question])
                    .Split('\n')
                    .Select(row => row.Split('|'))
                    .Select(row =>
                        string.Join(
                            '|',
                            cells.Select(cell =>
                                row[cell].Contains('.', StringComparison.Ordinal)
                                    ? Number(row[cell]).ToString("0.000000", CultureInfo.InvariantCulture)
                                    : row[cell]
                            )
                        )
                    )
            );
        Assert.Equal(
            Lines(
                answers.Segments,
                one => $"{one.Segment}|{one.Studies}|{one.Taken}|{one.ReadingSdDb:0.000000}|{one.PerDb2Minute:0.000000}"
            ),
            Asked(5, 0, 2, 3, 5, 6)
        );
        Assert.Equal(
            Lines(
                answers.Words.OrderBy(one => Store.Exports.FormatWords.Line(one.Line), StringComparer.Ordinal),
                one => $"{Store.Exports.FormatWords.Line(one.Line)}|{one.Word}|{one.Verdicts}"
            ),
            Asked(6, 0, 1, 2)
        );
        Assert.Equal(
            Lines(answers.Calibration, one => $"{one.Predictions}|{one.Stated:0.000000}|{one.CameTrue:0.000000}"),
            Asked(7, 1, 2, 3)
        );
        Assert.Equal(Lines(answers.Drifts, one => $"{one.Sessions}|{one.DriftDb}|{one.DbPerDegree}"), Asked(9, 1, 2, 4));
    }

    private static APostgres Made()
    {
        APostgres database = new();
        database.Run("psql", "-q", "-X", "-v", "ON_ERROR_STOP=1", "-f", TeamFiles.Path("schema.sql"));
        return database;
    }

    private static void IsAlike(int number, string one, string other)
    {
        string[] rows = one.Split('\n');
        string[] others = other.Split('\n');
        Assert.True(rows.Length == others.Length, $"question {number}:\n{one}\nbut\n{other}");
        foreach ((string[] cells, string[] told) in rows.Zip(others).Select(pair => (pair.First.Split('|'), pair.Second.Split('|'))))
        {
            Assert.True(
                cells.Zip(told).All(pair => pair.First == pair.Second || Math.Abs(Number(pair.First) - Number(pair.Second)) < 1e-9),
                $"question {number}:\n{one}\nbut\n{other}"
            );
        }
    }

    private static double Number(string text) =>
        double.TryParse(text, CultureInfo.InvariantCulture, out double number) ? number : double.NaN;

    private string Exported(string study)
    {
        _archive.Prompt.Must(
            ExitCode.Done,
            ["export", _archive.Prompt.Here($"archive/{study}.study"), "--out", _archive.Prompt.Here($"out/{study}")]
        );
        return _archive.Prompt.Here($"out/{study}");
    }
}
