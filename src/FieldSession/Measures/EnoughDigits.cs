using System.Globalization;

namespace FieldSession.Measures;

/// <summary>
/// How many decimals a number needs so that its rounded form does not contradict what is said of it: a number above a bound is printed
/// above it, and never on it. Own rule: as few decimals as asked for, more only where a bound is near.
/// </summary>
public static class EnoughDigits
{
    /// <summary>Beyond this no reader looks, and nothing that is measured here carries it.</summary>
    public const int Most = 8;

    /// <summary>Decimals at which every number keeps its side of every bound, at most <see cref="Most"/>.</summary>
    /// <param name="least">Decimals where no bound is near, 0 or more.</param>
    /// <param name="numbers">What is printed.</param>
    /// <param name="bounds">What the words beside it compare with, such as 0 and the margin.</param>
    public static int For(int least, ReadOnlySpan<double> numbers, ReadOnlySpan<double> bounds)
    {
        int decimals = least;
        while (decimals < Most && Contradicts(decimals, numbers, bounds))
        {
            decimals++;
        }

        return decimals;
    }

    /// <summary>Decimals at which the larger of two numbers is printed as the larger, at most <see cref="Most"/>.</summary>
    /// <param name="least">Decimals where they lie far apart, 0 or more.</param>
    /// <param name="one">A number.</param>
    /// <param name="other">Another.</param>
    public static int ToTellApart(int least, double one, double other)
    {
        int decimals = least;
        while (decimals < Most && Math.Sign(Printed(decimals, one) - Printed(decimals, other)) != Math.Sign(one - other))
        {
            decimals++;
        }

        return decimals;
    }

    /// <summary>The number with its sign and so many decimals; 0 has none.</summary>
    public static string WithSign(double number, int decimals)
    {
        string places = Places(decimals);
        return number.ToString($"+{places};-{places};{places}", CultureInfo.CurrentCulture);
    }

    /// <summary>The number with so many decimals.</summary>
    public static string Plain(double number, int decimals) => number.ToString(Places(decimals), CultureInfo.CurrentCulture);

    private static double Printed(int decimals, double number) =>
        double.Parse(number.ToString(Places(decimals), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Places(int decimals) => decimals == 0 ? "0" : "0." + new string('0', decimals);

    private static bool Contradicts(int decimals, ReadOnlySpan<double> numbers, ReadOnlySpan<double> bounds)
    {
        foreach (double number in numbers)
        {
            double printed = Printed(decimals, number);
            foreach (double bound in bounds)
            {
                if (Math.Sign(printed - bound) != Math.Sign(number - bound))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
