using System.IO.Compression;
using FieldSession.State;
using FieldSession.Terminal;
using FieldSession.Terminal.Screens.Driving;
using FieldSession.Tests.Making;
using Terminal.Gui.Input;

namespace FieldSession.Tests.Slips;

/// <summary>
/// Every word of an open word list is typed without a sign while a run is on, at 2 to 20 keys a second: no reading, no flag and no position
/// differs afterwards. The list: american-english-small of the Debian package wamerican-small 2020.12.07-2, made from SCOWL; its licence
/// lies beside it.
/// </summary>
public sealed class TypedWordsTests
{
    private const int FewestWords = 40_000;
    private const string List = "Slips/american-english-small.gz";

    [Fact]
    public void No_word_of_the_list_changes_a_reading_a_flag_or_the_segment_that_is_due()
    {
        ADay day = new ADay(ARoute.Plan).Ready().Typed("run 417", "5355", "6062 t", "6265");
        string before = Told(day.Study);
        TypingBox box = new() { Pressed = _ => false };
        EntryHand hand = new(new Desk { Logbook = day.Book, Clock = day.Clock }, new Pen(day.Book), box)
        {
            Changed = () => { },
            Asked = (_, _) => { },
        };
        int words = 0;
        foreach (string word in Words())
        {
            Type(day, hand, box, word, gapMs: 50 + (words++ * 37 % 451));
            Assert.True(Told(day.Study) == before, $"after '{word}':\n{Told(day.Study)}");
            hand.Drop();
            day.Clock.Advance(TimeSpan.FromSeconds(2));
        }

        Assert.True(words > FewestWords, $"only {words} words");
    }

    [Fact]
    public void No_word_of_the_list_typed_at_the_stop_changes_a_reading_or_a_flag()
    {
        ADay day = new ADay().Ready().Typed("run 417", "8486", "6365", "714 t");
        Desk desk = new() { Logbook = day.Book, Clock = day.Clock };
        Assert.True(desk.Parking.Take(Parking.Word));
        using StopScreen stop = new(desk, new Pen(day.Book));
        TypingBox box = Assert.Single(stop.SubViews.OfType<TypingBox>());
        stop.Enter();
        string before = Told(day.Study);
        int words = 0;
        string[] more = ["yes, run it", "you there?", "/usr/bin/env", "u turn ahead", "yay > out.txt", "unzip -l a.zip | less"];
        foreach (string word in Words().Concat(more))
        {
            int gapMs = 50 + (words++ * 37 % 451);
            foreach (char key in word.Length == 1 ? $"{word} " : word)
            {
                day.Clock.Advance(TimeSpan.FromMilliseconds(gapMs));
                box.NewKeyDownEvent(new Key(key));
            }

            Assert.True(Told(day.Study) == before, $"after '{word}':\n{Told(day.Study)}");
            Assert.EndsWith(word.Trim()[^1..], box.Text.TrimEnd(), StringComparison.Ordinal);
            box.Put("");
            day.Clock.Advance(TimeSpan.FromSeconds(2));
        }

        Assert.True(words > FewestWords, $"only {words} words");
    }

    private static void Type(ADay day, EntryHand hand, TypingBox box, string word, int gapMs)
    {
        // one letter alone is a key, as it must be
        foreach (char key in word.Length == 1 ? $"{word} " : word)
        {
            day.Clock.Advance(TimeSpan.FromMilliseconds(gapMs));
            TypedKey pressed = hand.Press(box.Text, key);
            hand.Do(pressed.Kind is TypedKind.Goes or TypedKind.Becomes ? new TypedKey(TypedKind.Nothing) : pressed);
            if (pressed.Kind is TypedKind.Goes or TypedKind.Becomes)
            {
                box.Put(pressed.Kind == TypedKind.Goes ? box.Text + key : pressed.Text);
            }
        }
    }

    private static string Told(Study study) =>
        $"{study.NextSegment?.Number} {study.Runs.Count} {study.Notes.Count} {string.Join('\n', study.Runs[0].Passages)}";

    private static IEnumerable<string> Words()
    {
        using StreamReader reader = new(new GZipStream(File.OpenRead(Path.Combine(Repository.Tests, List)), CompressionMode.Decompress));
        while (reader.ReadLine() is { } word)
        {
            yield return word;
        }
    }
}
