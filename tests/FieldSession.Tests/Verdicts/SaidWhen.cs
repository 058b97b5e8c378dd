using System.Text.RegularExpressions;

namespace FieldSession.Tests.Verdicts;

/// <summary>A line of a table of words: what may be said, and what must then be true of the numbers.</summary>
/// <param name="Says">The sentence, as a pattern over the whole of it.</param>
/// <param name="MustBeTrue">In words, for whoever reads the table.</param>
/// <param name="Holds">The same, asked of the numbers.</param>
internal sealed record SaidWhen<TNumbers>(string Says, string MustBeTrue, Func<TNumbers, bool> Holds)
{
    public bool Fits(string sentence) => Regex.IsMatch(sentence, $"^(?:{Says})$", RegexOptions.Singleline);
}

/// <summary>A table of words, and which of its lines were met: every sentence is on one line, and no line is idle.</summary>
internal sealed class WordTable<TNumbers>(params SaidWhen<TNumbers>[] lines)
{
    private readonly HashSet<string> _met = [];

    /// <summary>Reads a sentence against the numbers that it is about.</summary>
    public void Read(string sentence, TNumbers numbers)
    {
        SaidWhen<TNumbers>[] fitting = [.. lines.Where(line => line.Fits(sentence))];
        Assert.True(fitting.Length == 1, $"'{sentence}' stands on {fitting.Length} lines of the table, not on one");
        Assert.True(fitting[0].Holds(numbers), $"'{sentence}' is said, and it is not true that: {fitting[0].MustBeTrue}\n{numbers}");
        _met.Add(fitting[0].Says);
    }

    /// <summary>Whether every line was met by some sentence.</summary>
    /// <param name="seldom">Lines that the days may leave out, because chance seldom brings them; each is held by a test of its
    /// own.</param>
    public void HasNoIdleLine(params string[] seldom) => Assert.Empty(lines.Select(line => line.Says).Except(_met).Except(seldom));
}
