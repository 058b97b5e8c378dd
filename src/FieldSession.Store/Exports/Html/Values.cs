using Fluid;
using Fluid.Values;

namespace FieldSession.Store.Exports.Html;

/// <summary>Puts words, lists and named parts into the values of the template library, without its looking at types.</summary>
internal static class Values
{
    /// <summary>Words of a report, with marks in place of what can't be seen.</summary>
    public static FluidValue Text(string words) => new StringValue(VisibleText.Of(words));

    /// <summary>Something drawn by the program, as it is.</summary>
    public static FluidValue Drawn(string markup) => new StringValue(markup, encode: false);

    /// <summary>Yes or no.</summary>
    public static FluidValue Truth(bool value) => BooleanValue.Create(value);

    /// <summary>A list.</summary>
    public static FluidValue List(IEnumerable<FluidValue> values) => new ArrayValue([.. values]);

    /// <summary>Named parts.</summary>
    public static FluidValue Parts(params (string Name, FluidValue Value)[] parts) => new DictionaryValue(new Named(parts));

    private sealed class Named((string Name, FluidValue Value)[] parts) : IFluidIndexable
    {
        public int Count => parts.Length;

        public IEnumerable<string> Keys => parts.Select(part => part.Name);

        public bool TryGetValue(string name, out FluidValue value)
        {
            value = parts.FirstOrDefault(part => part.Name == name).Value
                ?? throw new FluidException(PageWords.NameIsNotHere(name, string.Join(", ", Keys)));
            return true;
        }
    }
}
