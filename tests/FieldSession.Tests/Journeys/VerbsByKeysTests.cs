using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Before, keys, after: every word that the program knows, typed at a stop by keys without a colon.</summary>
public sealed class VerbsByKeysTests
{
    public static TheoryData<string> Words => [.. VerbTable.All.Select(verb => verb.Word)];

    // The run is just over, its last reading may be flagged by one key: the stop at which most letters are acts.
    private static ADay AtAStop() => new ADay().Ready().Typed("run 417", "5860", "6365", "714");

    [Theory]
    [MemberData(nameof(Words))]
    public void A_word_at_a_stop_is_its_own_act_or_its_own_refusal_and_no_letter_of_it_is_an_act(string word)
    {
        ADay day = AtAStop();
        using Tui tui = new(day);
        tui.Keys($"{VerbTable.Of(word)!.Example}<Enter>");
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.Null(reading.Spoilt));
        Assert.Empty(day.Study.Notes);
        ADay same = AtAStop();
        Outcome outcome = same.Book.Write(VerbTable.Of(word)!.Example);
        if (outcome.Objection is { } objection)
        {
            Assert.Contains(objection.Why[..Math.Min(20, objection.Why.Length)], tui.Screen, StringComparison.Ordinal);
        }
        else
        {
            Assert.Equal(same.Journal.Lines[^1].Kind, day.Journal.Lines[^1].Kind);
        }
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void A_word_alone_at_a_stop_is_answered_with_its_own_form(string word)
    {
        ADay day = AtAStop();
        using Tui tui = new(day);
        tui.Keys($"{word}<Enter>");
        Assert.DoesNotContain("is not understood", tui.Screen, StringComparison.Ordinal);
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.Null(reading.Spoilt));
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void An_example_of_a_word_is_one_that_the_grammar_reads(string word)
    {
        Verb verb = VerbTable.Of(word)!;
        Assert.Equal(verb.Word, verb.Example.Split(' ')[0]);
        Assert.Contains(verb.Word, verb.Begun, StringComparison.Ordinal);
        Assert.DoesNotContain("is not understood", $"{EntryText.Parse(verb.Example, AtAStop().Study).Objection}", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rerun 1 lorry<Enter>", "only a whole bracket is driven again")]
    [InlineData("trials 862<Enter>", "trials name the pair of codes and their number")]
    public void A_word_that_begins_with_the_letter_of_a_flag_flags_nothing(string keys, string refusal)
    {
        ADay day = AtAStop();
        using Tui tui = new(day);
        Assert.Contains(refusal, tui.Keys(keys).Screen, StringComparison.Ordinal);
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.Null(reading.Spoilt));
    }

    [Fact]
    public void After_a_flag_on_another_reading_a_cause_letter_is_no_act_on_the_last_one()
    {
        ADay day = AtAStop().Typed("flag 1.1 t");
        using Tui tui = new(day);
        tui.Keys("t");
        Assert.Null(day.Study.Runs[0].LastReading!.Spoilt);
        Assert.Equal("t", tui.Box);
    }

    [Fact]
    public void After_a_flag_on_a_leg_a_cause_letter_is_no_act_on_the_last_reading()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714", "leg day=1 car=X code=417 km=212.4 kwh=38.0", "leg 1 w");
        using Tui tui = new(day);
        tui.Keys("t");
        Assert.Null(day.Study.Runs[0].LastReading!.Spoilt);
    }

    [Theory]
    [InlineData("wheather air=8", "weather")]
    [InlineData("calibartion before 94", "calibration")]
    [InlineData("corect 1.2 58-60", "correct")]
    public void A_word_that_is_nearly_right_is_answered_with_the_one_that_was_meant(string typed, string meant)
    {
        ADay day = AtAStop();
        Assert.Contains($"did you mean '{meant} ", day.Refusal(typed).Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void Tab_completes_every_word_from_two_letters_and_then_the_next_with_the_same_two()
    {
        Study study = AtAStop().Study;
        foreach (Verb verb in VerbTable.UsableIn(study))
        {
            string text = verb.Word[..2];
            HashSet<string> seen = [];
            while (seen.Add(text = Terminal.Screens.Driving.WordsBegun.Completed(text, study))) { }

            Assert.Contains(seen, line => line == $":{verb.Word}" || line.StartsWith($":{verb.Word} ", StringComparison.Ordinal));
        }
    }
}
