using System.Collections.Frozen;

namespace FieldSession.Terminal.Look;

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
