using System.Collections;
using System.Globalization;
using System.Reflection;

namespace FieldSession.Tests.Merging;

/// <summary>Every public member of a value and of all that it holds, as text: what nobody has to remember when a member is added.</summary>
internal static class EverythingTold
{
    private const int Deepest = 12;

    public static string By(object? value) => By(value, Deepest);

    private static string By(object? value, int left) =>
        value switch
        {
            null => "-",
            string text => $"'{text}'",
            double number => number.ToString("R", CultureInfo.InvariantCulture),
            IFormattable plain => plain.ToString(null, CultureInfo.InvariantCulture),
            Type or bool => $"{value}",
            _ when left == 0 => throw new InvalidOperationException($"{value.GetType()} holds itself"),
            IDictionary pairs => "{"
                + string.Join(
                    ", ",
                    pairs.Keys.Cast<object>().Select(key => $"{key}: {By(pairs[key], left - 1)}").Order(StringComparer.Ordinal)
                )
                + "}",
            IEnumerable many => $"[{string.Join(", ", many.Cast<object?>().Select(one => By(one, left - 1)))}]",
            _ => $"({string.Join(", ", MembersOf(value).Select(member => $"{member.Name}={By(member.GetValue(value), left - 1)}"))})",
        };

    private static IEnumerable<PropertyInfo> MembersOf(object value) =>
        value
            .GetType()
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(member => member.GetIndexParameters().Length == 0 && member.CanWrite);
}
