using System.Globalization;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>
/// Draws the blind codes. Three-digit random numbers name samples in sensory tests, because "A" and "B" sound like first
/// and second (ISO 13299:2016, sensory profile). Two codes of one study differ in at least two digits, so that one wrong
/// key on the moving seat never makes another valid code (own method, docs/blind.md).
/// </summary>
public static class CodeLot
{
    private const int Lowest = 100;
    private const int Highest = 999;

    /// <summary>Codes in the order in which the lot drew them.</summary>
    /// <param name="count">How many, 1..9.</param>
    /// <param name="used">Codes of earlier fittings of the study: none of them, nor one like them, is drawn again.</param>
    /// <param name="lot">Where chance comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is not in 1..9.</exception>
    /// <exception cref="InvalidOperationException">So many codes are used that none is left; not before 22 used codes.</exception>
    public static IReadOnlyList<SpecCode> Draw(int count, IReadOnlyCollection<SpecCode> used, ILot lot)
    {
        ArgumentNullException.ThrowIfNull(used);
        ArgumentNullException.ThrowIfNull(lot);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, SpecList.Most);
        List<SpecCode> left = [.. All().Where(code => IsNeutral(code) && used.All(other => Differ(code, other)))];
        List<SpecCode> drawn = new(count);
        while (drawn.Count < count)
        {
            if (left.Count == 0)
            {
                throw new InvalidOperationException("no code is left that differs in two digits from every used one; begin a new study");
            }

            SpecCode code = left[lot.Below(left.Count)];
            drawn.Add(code);
            left.RemoveAll(other => !Differ(code, other));
        }

        return drawn;
    }

    /// <summary>
    /// Whether a code says nothing of its own: no three equal digits (666), no run up or down (123, 321), no full hundred
    /// and nothing in 101..109 or below, which reads like a rank or like an agent's number (007).
    /// </summary>
    public static bool IsNeutral(SpecCode code)
    {
        ArgumentNullException.ThrowIfNull(code.Digits);
        int first = code.Digits[1] - code.Digits[0];
        int second = code.Digits[2] - code.Digits[1];
        bool isRun = first == second && Math.Abs(first) <= 1;
        bool isRank = code.Digits.EndsWith("00", StringComparison.Ordinal) || code.Digits.StartsWith("10", StringComparison.Ordinal);
        return !isRun && !isRank && code.Digits[0] != '0';
    }

    /// <summary>Whether two codes differ in at least two digits.</summary>
    public static bool Differ(SpecCode one, SpecCode other)
    {
        ArgumentNullException.ThrowIfNull(one.Digits);
        ArgumentNullException.ThrowIfNull(other.Digits);
        int alike = 0;
        for (int place = 0; place < 3; place++)
        {
            alike += one.Digits[place] == other.Digits[place] ? 1 : 0;
        }

        return alike <= 1;
    }

    /// <summary>The same things in an order drawn by lot, each order equally likely (Fisher and Yates).</summary>
    /// <typeparam name="T">What is shuffled.</typeparam>
    public static IReadOnlyList<T> Shuffled<T>(IEnumerable<T> things, ILot lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        List<T> order = [.. things];
        for (int last = order.Count - 1; last > 0; last--)
        {
            int pick = lot.Below(last + 1);
            (order[last], order[pick]) = (order[pick], order[last]);
        }

        return order;
    }

    private static IEnumerable<SpecCode> All() =>
        Enumerable.Range(Lowest, Highest - Lowest + 1).Select(number => new SpecCode(number.ToString(CultureInfo.InvariantCulture)));
}
