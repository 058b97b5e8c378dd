using System.IO.Compression;
using FieldSession.State;
using FieldSession.Terminal;
using FieldSession.Terminal.Screens.Driving;
using FieldSession.Tests.Making;
using Terminal.Gui.Input;

namespace FieldSession.Tests.Slips;

/// <summary>
/// Words of an open word list are typed without a sign while a run is on, at 2 to 20 keys a second: no reading, no flag and no position
/// differs afterwards. The suite types one word in eight; FIELDSESSION_EVERY_WORD=1 types all of them.
/// The list: american-english-small of the Debian package wamerican-small 2020.12.07-2, made from SCOWL; its licence
/// lies beside it.
/// </summary>
public sealed class TypedWordsTests
{
    private const string EveryWord = "FIELDSESSION_EVERY_WORD";
    private const string ListFile = "Slips/american-english-small.gz";

    [Fact]
    public void No_word_of_the_list_changes_a_reading_a_flag_or_the_segment_that_is_due()
    {
        ADay day = new ADay(ARoute.Plan).Ready().Typed("run 417", "5355", "6062 t", "6265");
        AsItWas was = new(day);
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
            was.Check(word);
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
        AsItWas was = new(day);
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

            was.Check(word);
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

    private static int OneIn => Environment.GetEnvironmentVariable(EveryWord) == "1" ? 1 : 8;

    private static int FewestWords => 40_000 / OneIn;

    private static IEnumerable<string> Words() => List().Where((_, place) => place % OneIn == 0);

    private static IEnumerable<string> List()
    {
        using StreamReader reader = new(
            new GZipStream(File.OpenRead(Path.Combine(Repository.Tests, ListFile)), CompressionMode.Decompress)
        );
        while (reader.ReadLine() is { } word)
        {
            yield return word;
        }
    }

    /// <summary>What must not change, told once; a study that is the same object has not changed.</summary>
    private sealed class AsItWas(ADay day)
    {
        private readonly string _before = Told(day.Study);
        private Study _last = day.Study;

        public void Check(string word)
        {
            if (!ReferenceEquals(day.Study, _last))
            {
                Assert.True(Told(day.Study) == _before, $"after '{word}':\n{Told(day.Study)}");
                _last = day.Study;
            }
        }

        private static string Told(Study study) =>
            $"{study.NextSegment?.Number} {study.Runs.Count} {study.Notes.Count} {string.Join('\n', study.Runs[0].Passages)}";
    }
}
