using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The forced choices of sets that are not covered.</summary>
internal static class ChoicesTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<(ChoiceSet Set, Choice Choice)>(
            "choices",
            "What somebody chose in one forced-choice trial: one row a trial. A set that is not at its planned end is left out.",
            [
                Column.Count<(ChoiceSet Set, Choice Choice)>("set", "number of the set of trials", c => c.Set.Number).Always,
                Column
                    .Text<(ChoiceSet Set, Choice Choice)>(
                        "kind",
                        "how it is put",
                        c => c.Set.Terms.Kind == ChoiceKind.Triangle ? "triangle" : "paired"
                    )
                    .Always.OneOf("paired", "triangle"),
                Column.Text<(ChoiceSet Set, Choice Choice)>("question", "what is asked", c => c.Set.Terms.Question).Always,
                Column.Count<(ChoiceSet Set, Choice Choice)>(
                    "segment_number",
                    "segment it is asked on; empty: any",
                    c => c.Set.Terms.Segment
                ),
                Column.Text<(ChoiceSet Set, Choice Choice)>(
                    "expected",
                    "code named beforehand: one-sided; empty: two-sided, or a triangle",
                    c => c.Set.Terms.Expected?.Digits
                ),
                Column.Count<(ChoiceSet Set, Choice Choice)>("planned", "trials planned in the set", c => c.Set.Presentations.Count).Always,
                Column.Count<(ChoiceSet Set, Choice Choice)>("trial", "number of the trial in the set", c => c.Choice.Trial).Always,
                Column.Text<(ChoiceSet Set, Choice Choice)>("presented", "the codes in the order they were presented", Presented).Always,
                Column.Text<(ChoiceSet Set, Choice Choice)>("person", "who chose", c => c.Choice.Person).Always,
                Column.Count<(ChoiceSet Set, Choice Choice)>("place", "place chosen, from 1", c => c.Choice.Place).Always,
                Column
                    .Text<(ChoiceSet Set, Choice Choice)>(
                        "chosen",
                        "code at that place",
                        c => c.Set.CodeAt(c.Choice.Trial, c.Choice.Place).Digits
                    )
                    .Always,
                Column.YesNo<(ChoiceSet Set, Choice Choice)>("odd_found", "whether the odd one was found; empty: no triangle", OddFound),
                Column
                    .Text<(ChoiceSet Set, Choice Choice)>(
                        "sight",
                        "what the person could know of the answer; only unseen choices carry the ear's word",
                        c => Sight(c.Choice.Sight)
                    )
                    .Always.OneOf("unseen", "meter seen", "order seen"),
                Column
                    .YesNo<(ChoiceSet Set, Choice Choice)>(
                        "from_recordings",
                        "whether clips of recordings were played at home",
                        c => c.Set.IsFromRecordings
                    )
                    .Always,
                Column.Count<(ChoiceSet Set, Choice Choice)>(
                    "clip_segment",
                    "segment that the clips are of; empty: presented in the car",
                    c => c.Choice.Clips?.Segment
                ),
                Column.Text<(ChoiceSet Set, Choice Choice)>(
                    "clip_runs",
                    "runs that the clips are of, place by place; empty: presented in the car",
                    c => c.Choice.Clips is { } clips ? string.Join(' ', clips.Runs) : null
                ),
                Column.Count<(ChoiceSet Set, Choice Choice)>("line", "journal line", c => c.Choice.Mark.Place).Always,
                Column.Time<(ChoiceSet Set, Choice Choice)>("at", "when it was stored", c => c.Choice.Mark.At).Always,
                Column
                    .YesNo<(ChoiceSet Set, Choice Choice)>(
                        "typed_later",
                        "whether it was logged on paper and typed in afterwards",
                        c => c.Choice.Mark.IsTypedLater
                    )
                    .Always,
            ],
            source =>
                source
                    .Study.ChoiceSets.Where(set => set.IsShown(source.Study))
                    .SelectMany(set => set.Choices.Select(choice => (set, choice)))
        )
        {
            Key = ["line"],
            Links = [new("segment_number", "segments", "segment_number"), new("chosen", "codes", "code"), new("expected", "codes", "code")],
        };

    private static string Presented((ChoiceSet Set, Choice Choice) one) =>
        string.Join(' ', Enumerable.Range(1, one.Set.Terms.Places).Select(place => one.Set.CodeAt(one.Choice.Trial, place).Digits));

    private static string Sight(ChoiceSight sight) =>
        sight switch
        {
            ChoiceSight.Unseen => "unseen",
            ChoiceSight.MeterSeen => "meter seen",
            _ => "order seen",
        };

    private static bool? OddFound((ChoiceSet Set, Choice Choice) one) =>
        one.Set.Terms.Kind == ChoiceKind.Triangle ? one.Set.IsOdd(one.Choice.Trial, one.Choice.Place) : null;
}
