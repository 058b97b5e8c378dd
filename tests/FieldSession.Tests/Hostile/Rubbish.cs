using System.Collections.Immutable;
using System.Text;

namespace FieldSession.Tests.Hostile;

/// <summary>Draws what nobody should type and no file should hold, and what almost fits. Same seed, same rubbish.</summary>
internal sealed class Rubbish(Random chance)
{
    // what begins no line: keys, values, and numbers that nobody means
    private static readonly ImmutableArray<string> RestOfTheGrammar =
    [
        "417",
        "862",
        "m",
        "missed",
        "u",
        "undo",
        "t",
        "w",
        "s",
        "r",
        "n",
        "e",
        "+",
        "*",
        "/",
        "clean",
        ";",
        ":",
        ";1",
        ";9",
        ";tam:",
        "before",
        "after",
        "94",
        "94.0",
        "air=6",
        "road=5",
        "wind=2",
        "gust=4",
        "surface=dry",
        "surface=wet",
        "wind",
        "commitment",
        "because",
        "Ro",
        "Tam",
        "softer",
        "louder",
        "1.1",
        "1.2",
        "2.3",
        "99.99",
        "+1",
        "-1",
        "0",
        "5860",
        "58-60",
        "60-58",
        "58.5",
        "58,5",
        "585605",
        "#",
        "open",
        "tally",
        "1e308",
        "-0",
        "NaN",
        "Infinity",
        "99999999999999999999",
        "2147483647",
        "-2147483648",
        "0x1F",
        "\u0665\u0668",
        "..",
        "--",
        "=",
        ".",
        "R",
        "1",
    ];

    private static readonly ImmutableArray<string> Words =
    [
        .. VerbTable.All.SelectMany(verb => verb.Example.Split(' ').Prepend(verb.Word)),
        .. RestOfTheGrammar,
    ];

    private static readonly ImmutableArray<string> Odd =
    [
        "\0",
        "\u001b[2J",
        "\r",
        "\n",
        "\t",
        "\u0085",
        "\u2028",
        "\u202e",
        "\ufeff",
        "\ufffd",
        "\ud800",
        "\udc00",
        "\U0001F697",
        "e\u0301",
        "\u00a0",
        "\u3000",
        "\"",
        "\\",
        "'",
        "{",
        "}",
        "[",
        "]",
        ",",
        "<",
        ">",
        "%s",
        "{0}",
        "../",
        "/dev/zero",
        "\u0130",
        "\u00df",
        "=",
        "\u7fff",
    ];

    /// <summary>A typed line: words of the grammar in any order, with odd signs, of any length, or nothing of the kind.</summary>
    public string Line() =>
        chance.Next(20) switch
        {
            0 => Noise(chance.Next(60)),
            1 => new string((char)chance.Next(1, 0x300), chance.Next(1, 5000)),
            2 => Edited(Sentence()),
            3 => $"; {Noise(chance.Next(200))}",
            < 8 => $"{chance.Next(30, 120)}-{chance.Next(30, 120)}",
            < 10 => $"{chance.Next(10000)} {Of(Words)}",
            _ => Sentence(),
        };

    /// <summary>A text with a few edits: signs changed, taken out, put in, blocks doubled or cut.</summary>
    public string Edited(string text)
    {
        StringBuilder edited = new(text);
        for (int i = chance.Next(1, 5); i > 0; i--)
        {
            int at = chance.Next(edited.Length + 1);
            int length = Math.Min(chance.Next(1, 12), edited.Length - at);
            _ = chance.Next(5) switch
            {
                0 => edited.Remove(at, length),
                1 => edited.Insert(at, Of(Odd)),
                2 => edited.Insert(at, Of(Words)),
                3 => edited.Insert(at, edited.ToString(at, length)),
                _ => edited.Remove(at, length).Insert(at, Noise(length)),
            };
        }

        return edited.ToString();
    }

    /// <summary>Bytes with a few edits.</summary>
    public byte[] Edited(byte[] bytes)
    {
        List<byte> edited = [.. bytes];
        for (int i = chance.Next(1, 4); i > 0; i--)
        {
            int at = chance.Next(edited.Count + 1);
            int length = Math.Min(chance.Next(1, 40), edited.Count - at);
            byte[] noise = new byte[chance.Next(40)];
            chance.NextBytes(noise);
            edited.RemoveRange(at, length);
            edited.InsertRange(at, chance.Next(3) == 0 ? [] : noise);
        }

        return [.. edited];
    }

    /// <summary>One of some things.</summary>
    public T Of<T>(IReadOnlyList<T> things) => things[chance.Next(things.Count)];

    private string Sentence() =>
        string.Join(chance.Next(10) == 0 ? "" : " ", Enumerable.Range(0, chance.Next(1, 6)).Select(_ => Of(Words)));

    private string Noise(int length)
    {
        StringBuilder noise = new();
        while (noise.Length < length)
        {
            noise.Append(chance.Next(3) == 0 ? Of(Odd) : $"{(char)chance.Next(32, 127)}");
        }

        return noise.ToString();
    }
}
