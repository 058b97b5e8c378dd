using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Revealing;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journal;

/// <summary>The table of what may be written when: each kind of entry against each stage of the day.</summary>
public class EachStageTakesItsOwnActs
{
    private const string Stages = "empty planned sealed run stop locked1 locked2 revealed";

    private const string Nowhere = "";

    private static readonly SpecCode One = new("417");
    private static readonly SpecCode Other = new("862");

    /// <summary>Kind, and the stages that take an entry of it; everywhere else it is refused.</summary>
    public static TheoryData<string, string> Table =>
        new()
        {
            { "plan", "empty planned" },
            { "amended", "planned sealed stop" },
            { "sealed", "planned stop" },
            { "calibration", "planned sealed" },
            { "weather", "planned sealed run stop" },
            { "override", "planned sealed" },
            { "run", "stop" },
            { "reading", "run" },
            { "missed", "run" },
            { "segment", "run" },
            { "end", "run" },
            { "undo", "run stop" },
            { "letters", "run stop" },
            { "note", "planned sealed run stop locked1 locked2 revealed" },
            { "speaker", "run stop" },
            { "confirmed", "stop" },
            { "corrected", "stop" },
            { "filled", "stop" },
            { "aborted", "stop" },
            { "shift", "stop" },
            { "spoilt", "run stop" },
            { "clean", "run stop" },
            { "prediction", "locked1" },
            { "opened", "locked2" },
            { "marks", "revealed" },
            { "archive", "planned sealed" },
            { "check", "planned sealed run stop" },
            { "extra", "run stop" },
            { "rating", "stop" },
            { "ratings-closed", "stop" },
            { "trials", "sealed stop" },
            { "leg", "sealed stop" },
            { "mark", "planned sealed run stop" },
            { "chain", "planned sealed run stop" },
            { "gain", "planned sealed run stop" },
            { "recording", "stop" },
            { "log", "stop" },
            // what they are about is nowhere in this day: a second laptop, a closed bracket, a set of trials, a leg, a recording
            { "ring-opened", Nowhere },
            { "joined", Nowhere },
            { "settled", Nowhere },
            { "rerun", Nowhere },
            { "slip", Nowhere },
            { "choice", Nowhere },
            { "leg-spoilt", Nowhere },
        };

    [Fact]
    public void Every_kind_is_in_the_table()
    {
        string[] kinds = [.. EntryKinds.All.Select(kind => kind.Name)];
        string[] told = [.. Table.Select(row => row.Data.Item1)];
        Assert.True(kinds.Except(told).ToArray() is [], $"add rows and lines to type: {string.Join(", ", kinds.Except(told))}");
        Assert.Equal(kinds.Order(), told.Order());
    }

    [Theory]
    [MemberData(nameof(Table))]
    public void A_kind_is_taken_in_its_stages_and_in_no_other(string kind, string stages)
    {
        string[] taken = stages.Split(' ');
        List<string> offenders = [];
        foreach (string stage in Stages.Split(' '))
        {
            Study study = At(stage);
            Objection? no = Sample(kind, study).ObjectionIn(study);
            if (no is null != taken.Contains(stage))
            {
                offenders.Add($"{stage}: {(no is null ? "taken" : no.ToString())}");
            }

            Assert.True(no is null || (no.Why.Length > 0 && no.Instead.Length > 0));
        }

        Assert.True(offenders.Count == 0, $"{kind}:\n{string.Join('\n', offenders)}");
    }

    [Fact]
    public void After_the_first_prediction_only_notes_predictions_and_the_reveal_are_taken_whatever_kind_is_added()
    {
        foreach (Entry entry in OneOfEachKind.All.Where(entry => EntryKinds.Of(entry).Name is not ("note" or "prediction" or "opened")))
        {
            Assert.NotNull(entry.ObjectionIn(At("locked1")));
            Assert.NotNull(entry.ObjectionIn(At("locked2")));
        }

        Assert.All(
            OneOfEachKind.All.Where(entry => EntryKinds.Of(entry).Name is not ("note" or "marks")),
            entry => Assert.NotNull(entry.ObjectionIn(At("revealed")))
        );
    }

    // An entry that would be right but for the stage.
    private static Entry Sample(string kind, Study study) =>
        kind switch
        {
            "plan" => new PlanMade(ADay.ShortPlan),
            "sealed" => new SpecsSealed(study.Fittings.Count == 0 ? [One, Other] : [new("531"), new("290")], new string('a', 64)),
            "opened" => new KeyOpened([new CodedSpec(One, "A"), new CodedSpec(Other, "B")], "A", null, null, [], []),
            "marks" => new MarksReadAgain([.. study.DrivenCodes.Select(code => new MarkRead(code, "A"))], ["Ro", "Ilse"], []),
            "archive" or "joined" or "settled" or "leg" or "leg-spoilt" or "slip" or "choice" or "gain" or "recording" or "log" =>
                OneOfEachKind.All.Single(entry => EntryKinds.Of(entry).Name == kind),
            _ => OneTyped(kind, study),
        };

    private static Entry OneTyped(string kind, Study study)
    {
        int reading = study.LastRun?.LastReading?.Mark.Number ?? 1;
        return kind switch
        {
            "speaker" => new FieldSession.Driving.NoteAttributed(study.Notes.Count > 0 ? study.Notes[^1].Mark.Number : 1, "Ro"),
            "undo" => new FieldSession.Driving.ActUndone(study.Undoables.Count > 0 ? study.Undoables[^1].Line : 1),
            "letters" => new FieldSession.Driving.LettersTakenBack(study.Undoables.Count > 0 ? study.Undoables[^1].Line : 1),
            "aborted" => new FieldSession.Driving.AbortExplained(2, "puncture"),
            "spoilt" => new FieldSession.Flagging.ReadingSpoilt(reading, SpoiltCause.Traffic),
            "clean" => new FieldSession.Flagging.FlagTakenBack(reading),
            _ => EntryText.Parse(Typed(kind), study).Entry!,
        };
    }

    private static string Typed(string kind) =>
        kind switch
        {
            "amended" => "amend margin_db=1.5 because why",
            "calibration" => "calibration before 94.0",
            "weather" => "weather air=6",
            "override" => "override calibration-before none at hand",
            "run" => "run 417",
            "reading" => "58-60",
            "missed" => "m",
            "segment" => "seg 1",
            "end" => "end",
            "note" => "; a word",
            "confirmed" => "confirm 1.1",
            "corrected" => "correct 1.1 60-62",
            "filled" => "fill 2.3 71.4",
            "shift" => "shift 2.1 +1",
            "check" => "check mass 1480 1484",
            "rerun" => "rerun bracket 1 lorry ahead",
            "extra" => "extra c=74.2",
            "rating" => "rate Tam roar 6.25",
            "ratings-closed" => "ratings closed",
            "trials" => "trials 862 417 n=10",
            "mark" => "mark",
            "chain" => "chain recorder at=headrest",
            "ring-opened" => "ring open because the owner asks",
            "prediction" => "predict Tam feature=862 sure=2",
            _ => throw new ArgumentException($"'{kind}' has no line here: add one that is typed as an example of it", nameof(kind)),
        };

    private static Study At(string stage)
    {
        if (stage == "empty")
        {
            return Study.Empty;
        }

        ADay day = new(isSealed: stage != "planned");
        if (stage is "planned" or "sealed")
        {
            return day.Study;
        }

        day.Ready().Typed("run 417", "60-99", "64-66", "71.4", "run 862", "60-62 t", "64-66", "; grit");
        if (stage == "run")
        {
            return day.Study;
        }

        day.Typed("end");
        if (stage == "stop")
        {
            return day.Study;
        }

        day.Typed("calibration after 94.0", "confirm 1.1", "predict Ro feature=862 sure=4");
        if (stage == "locked1")
        {
            return day.Study;
        }

        day.Typed("predict Tam feature=862 sure=4");
        if (stage == "revealed")
        {
            Assert.True(day.Book.Write(Sample("opened", day.Study)).IsWritten);
        }

        return day.Study;
    }
}
