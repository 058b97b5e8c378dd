using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Reviewing;

namespace FieldSession.Terminal.Look;

/// <summary>How the names and figures that have to be found at a glance are written.</summary>
internal enum LetterForm
{
    /// <summary>As large as there is room, by block letters.</summary>
    Block,

    /// <summary>As ordinary text in one row, which a screen reader can say.</summary>
    Plain,
}

/// <summary>
/// A text in the largest form that fits: block letters of five rows, of three rows (two dots a row, by half blocks),
/// spaced capitals, or as it is. Plain letters are always as they are.
/// </summary>
internal static class LargeText
{
    /// <summary>The rows of the largest form within so many columns and rows; one row at least.</summary>
    public static ImmutableArray<string> Of(string text, int columns, int mostRows, LetterForm form = LetterForm.Block) =>
        form == LetterForm.Plain ? [Columns.Cut(text, columns)] : Largest(text, columns, mostRows);

    private static ImmutableArray<string> Largest(string text, int columns, int mostRows)
    {
        if (BlockFont.Dots(text) is { } dots && dots[0].Length > 0)
        {
            if (mostRows >= BlockFont.Height && dots[0].Length * 2 <= columns)
            {
                return
                [
                    .. dots.Select(row =>
                        row.Replace(".", "  ", StringComparison.Ordinal).Replace("#", "\u2588\u2588", StringComparison.Ordinal)
                    ),
                ];
            }

            if (mostRows >= 3 && dots[0].Length <= columns)
            {
                return [HalfBlocks(dots[0], dots[1]), HalfBlocks(dots[2], dots[3]), HalfBlocks(dots[4], new string('.', dots[4].Length))];
            }
        }

        string spaced = Spaced(text);
        return [Columns.Of(spaced) <= columns ? spaced : Columns.Cut(text, columns)];
    }

    private static string HalfBlocks(string upper, string lower) =>
        string.Concat(
            upper.Zip(
                lower,
                (above, below) =>
                    (above, below) switch
                    {
                        ('#', '#') => '\u2588',
                        ('#', _) => '\u2580',
                        (_, '#') => '\u2584',
                        _ => ' ',
                    }
            )
        );

    private static string Spaced(string text)
    {
        List<string> clusters = [];
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text.ToUpperInvariant());
        while (elements.MoveNext())
        {
            clusters.Add(elements.GetTextElement());
        }

        return string.Join(' ', clusters);
    }
}

/// <summary>A small font of our own: capitals, figures and a few signs, five dots high and three to five wide.</summary>
internal static class BlockFont
{
    /// <summary>Height of every sign in dots.</summary>
    public const int Height = 5;

    // Each line: the sign, then its five rows of dots from the top.
    private static readonly FrozenDictionary<char, string[]> Signs = """
        A .#. #.# ### #.# #.#
        B ##. #.# ##. #.# ##.
        C .## #.. #.. #.. .##
        D ##. #.# #.# #.# ##.
        E ### #.. ##. #.. ###
        F ### #.. ##. #.. #..
        G .### #... #.## #..# .##.
        H #.# #.# ### #.# #.#
        I # # # # #
        J ..# ..# ..# #.# .#.
        K #..# #.#. ##.. #.#. #..#
        L #.. #.. #.. #.. ###
        M #...# ##.## #.#.# #...# #...#
        N #..# ##.# #.## #..# #..#
        O .##. #..# #..# #..# .##.
        P ##. #.# ##. #.. #..
        Q .##. #..# #..# #.## .###
        R ##. #.# ##. #.# #.#
        S .## #.. .#. ..# ##.
        T ### .#. .#. .#. .#.
        U #.# #.# #.# #.# ###
        V #.# #.# #.# #.# .#.
        W #...# #...# #.#.# ##.## #...#
        X #.# #.# .#. #.# #.#
        Y #.# #.# .#. .#. .#.
        Z ### ..# .#. #.. ###
        0 ### #.# #.# #.# ###
        1 .#. ##. .#. .#. ###
        2 ### ..# ### #.. ###
        3 ### ..# .## ..# ###
        4 #.# #.# ### ..# ..#
        5 ### #.. ### ..# ###
        6 ### #.. ### #.# ###
        7 ### ..# ..# .#. .#.
        8 ### #.# ### #.# ###
        9 ### #.# ### ..# ###
        - ... ... ### ... ...
        . . . . . #
        , .. .. .. .# #.
        ! # # # . #
        ? ### ..# .## ... .#.
        ' # # . . .
        / ..# ..# .#. #.. #..
        ( .# #. #. #. .#
        ) #. .# .# .# #.
        """.Split('\n').Select(line => line.Split(' ')).ToFrozenDictionary(parts => parts[0][0], parts => parts[1..]);

    /// <summary>The dots of a text, row by row, '#' for a dot; null where the font lacks a sign.</summary>
    public static string[]? Dots(string text)
    {
        string[] rows = ["", "", "", "", ""];
        foreach (char sign in text.ToUpperInvariant())
        {
            string[]? dots = sign == ' ' ? ["..", "..", "..", "..", ".."] : Signs.GetValueOrDefault(sign);
            if (dots is null)
            {
                return null;
            }

            for (int row = 0; row < Height; row++)
            {
                rows[row] += rows[row].Length == 0 ? dots[row] : "." + dots[row];
            }
        }

        return rows;
    }
}
